package tenthmark.checker.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * In the locale C, that of cron, Java takes every letter of a file's name that is not English for
 * an unknown sign and cannot open the file; no option of Java helps. There the program starts
 * itself anew in a locale that knows all letters.
 */
final class ReadableLocale {

  /** Set in the second start, which starts no third one. */
  private static final String STARTED = "TENTHMARK_STARTED_ANEW";

  private static final Path COMMAND_LINE = Path.of("/proc/self/cmdline");

  private ReadableLocale() {}

  /** Runs the program anew, if it must be and can be; its exit status. */
  static OptionalInt run() {
    boolean readable = !"ANSI_X3.4-1968".equals(System.getProperty("sun.jnu.encoding"));
    if (readable || System.getenv(STARTED) != null || !Files.isReadable(COMMAND_LINE)) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(again(Files.readAllBytes(COMMAND_LINE)));
    } catch (IOException impossible) {
      // Names in English can be read as it is; others are refused with what to do.
      return OptionalInt.empty();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return OptionalInt.of(Main.FAILED);
    }
  }

  /** The command line goes into a file, byte by byte, as this Java can hand over only English. */
  private static int again(byte[] commandLine) throws IOException, InterruptedException {
    Path arguments = Files.createTempFile("tenthmark", ".args");
    try {
      Files.write(arguments, quoted(commandLine));
      ProcessBuilder builder =
          new ProcessBuilder("/proc/" + ProcessHandle.current().pid() + "/exe", "@" + arguments);
      builder.environment().put("LC_ALL", "C.UTF-8");
      builder.environment().put(STARTED, "yes");
      Process process = builder.inheritIO().start();
      Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
      return process.waitFor();
    } finally {
      Files.deleteIfExists(arguments);
    }
  }

  /**
   * The arguments after the program, each in quotation marks, as the launcher of Java reads them.
   */
  private static byte[] quoted(byte[] commandLine) {
    ByteArrayOutputStream quoted = new ByteArrayOutputStream();
    int start = 0;
    boolean program = true;
    for (int end = 0; end < commandLine.length; end++) {
      if (commandLine[end] == 0) {
        if (!program) {
          quote(commandLine, start, end, quoted);
        }
        program = false;
        start = end + 1;
      }
    }
    return quoted.toByteArray();
  }

  private static void quote(byte[] commandLine, int start, int end, ByteArrayOutputStream quoted) {
    quoted.write('"');
    for (int i = start; i < end; i++) {
      switch (commandLine[i]) {
        case '"', '\\' -> {
          quoted.write('\\');
          quoted.write(commandLine[i]);
        }
        case '\n' -> quoted.writeBytes("\\n".getBytes(StandardCharsets.US_ASCII));
        case '\r' -> quoted.writeBytes("\\r".getBytes(StandardCharsets.US_ASCII));
        default -> quoted.write(commandLine[i]);
      }
    }
    quoted.writeBytes("\"\n".getBytes(StandardCharsets.US_ASCII));
  }
}
