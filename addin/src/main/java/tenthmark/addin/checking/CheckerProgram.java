package tenthmark.addin.checking;

import com.sun.star.uno.Exception;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import tenthmark.addin.checking.CheckerRun.Output;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;

/**
 * The checker's runnable jar, and the Java that runs it.
 *
 * @param java the program
 */
record CheckerProgram(Path java, Path jar) {

  private static final Duration LONGEST = Duration.ofSeconds(90);
  private static final String MEMORY = "-Xmx512m";

  /** The jar that the extension ships, with the Java that runs the extension. */
  static CheckerProgram in(Path extension) {
    Path programs = Path.of(System.getProperty("java.home"), "bin");
    Path java =
        Stream.of("java", "java.exe")
            .map(programs::resolve)
            .filter(Files::exists)
            .findFirst()
            .orElseThrow(() -> new RefusalException("checker.no-java", programs.toString()));
    Path jar = extension.resolve("tenthmark-checker.jar");
    if (!Files.exists(jar)) {
      throw new RefusalException("checker.missing");
    }
    return new CheckerProgram(java, jar);
  }

  /** What is done with the output of a run on a copy. */
  @FunctionalInterface
  interface Next {

    /** Takes it, as long as the copy is there. */
    void take(Output output, Path copy) throws Exception, IOException;
  }

  /**
   * Runs it on a copy of the open spreadsheet as it is, saved or not.
   *
   * @param task key of the sentence that says what is done
   * @param arguments for a copy
   */
  void onCopy(
      Workplace workplace,
      FileFormat format,
      String task,
      Function<Path, List<String>> arguments,
      Next next)
      throws Exception, IOException {
    TemporaryFolder folder = TemporaryFolder.create();
    try {
      Path copy = folder.file("workbook" + format.ending());
      workplace.spreadsheet().storeCopy(copy, format.filter());
      start(folder, arguments.apply(copy))
          .then(output -> next.take(output, copy), LONGEST, task, workplace);
    } catch (Exception | IOException | RuntimeException failure) {
      folder.close();
      throw failure;
    }
  }

  private CheckerRun start(TemporaryFolder folder, List<String> arguments) throws IOException {
    List<String> line = new ArrayList<>(List.of(java.toString(), MEMORY, "-jar", jar.toString()));
    line.addAll(arguments);
    Process process =
        new ProcessBuilder(line)
            .redirectInput(
                ProcessBuilder.Redirect.from(Files.createFile(folder.file("in")).toFile()))
            .redirectOutput(folder.file(CheckerRun.OUT).toFile())
            .redirectError(folder.file(CheckerRun.ERR).toFile())
            .start();
    return new CheckerRun(process, folder);
  }
}
