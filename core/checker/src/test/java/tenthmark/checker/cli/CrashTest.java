package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.NoSuchFileException;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A crash is never taken for a check that found something, whose status is 1. */
class CrashTest {

  @Command(name = "crash")
  private record Crash(Throwable fault) implements Callable<Integer> {

    @Override
    public Integer call() throws Exception {
      if (fault instanceof Error error) {
        throw error;
      }
      throw (Exception) fault;
    }
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        Arguments.of(new OutOfMemoryError("heap"), "it needs more memory than the checker has"),
        Arguments.of(new StackOverflowError(), "its parts are nested too deeply"),
        Arguments.of(
            new ExceptionInInitializerError("poi"),
            "the checker itself failed (please report this: ExceptionInInitializerError at "),
        Arguments.of(
            new NullPointerException(),
            "the checker itself failed (please report this: NullPointerException at "),
        Arguments.of(new NoSuchFileException("x.xlsx"), "no such file or folder"),
        Arguments.of(new IOException("No space left on device"), "No space left on device"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void isALineAndTheStatusTwo(Throwable fault, String reason) {
    StringWriter err = new StringWriter();
    CommandLine checker = Main.commandLine(new PrintWriter(err, true), new PrintWriter(err, true));
    checker.addSubcommand(new Crash(fault));
    checker
        .setErr(checker.getErr())
        .setExecutionExceptionHandler(checker.getExecutionExceptionHandler());

    assertThat(Main.run(checker, "crash")).isEqualTo(2);

    assertThat(err.toString().lines())
        .singleElement()
        .asString()
        .startsWith("tenthmark-checker failed: " + reason);
  }
}
