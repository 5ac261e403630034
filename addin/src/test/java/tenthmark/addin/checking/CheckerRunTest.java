package tenthmark.addin.checking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.addin.menu.Conversation;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;

class CheckerRunTest {

  private final Workplace workplace = new Workplace(null, null, null, new Nobody(), "check");

  /** A program that ends only if it is made to. */
  static final class Endless {

    public static void main(String[] arguments) throws InterruptedException {
      Thread.sleep(Duration.ofMinutes(10).toMillis());
    }
  }

  /** One that says something and ends. */
  static final class Talkative {

    public static void main(String[] arguments) {
      System.out.print("found");
      System.err.println("a message");
      System.exit(1);
    }
  }

  private record Nobody() implements Conversation {

    @Override
    public void tell(String sentence) {}

    @Override
    public void warn(String sentence) {}

    @Override
    public boolean confirm(String question) {
      return false;
    }

    @Override
    public boolean canShowWindows() {
      return false;
    }
  }

  @Test
  void handsItsOutputOnAndRemovesItsFolder() throws Exception {
    CheckerRun run = start(Talkative.class);
    List<CheckerRun.Output> outputs = new ArrayList<>();
    run.then(outputs::add, Duration.ofMinutes(1), "checker.running", workplace);
    assertThat(outputs).containsExactly(new CheckerRun.Output(1, "found", "a message"));
    assertThat(run.folder().path()).doesNotExist();
  }

  @Test
  void endsAProcessThatTakesTooLongAndRemovesItsFolder() throws Exception {
    CheckerRun run = start(Endless.class);
    assertThatThrownBy(
            () ->
                run.then(
                    output -> assertThat(output).as("output").isNull(),
                    Duration.ofMillis(300),
                    "checker.running",
                    workplace))
        .isInstanceOf(RefusalException.class)
        .hasMessage("checker.too-long");
    assertThat(run.process().isAlive()).isFalse();
    assertThat(run.folder().path()).doesNotExist();
  }

  @Test
  void removesItsFolderEvenIfTheOutputIsOfNoUse() throws Exception {
    CheckerRun run = start(Talkative.class);
    assertThatThrownBy(
            () ->
                run.then(
                    output -> {
                      throw output.refusal("checker.failed", Path.of("copy.ods"), "Bench");
                    },
                    Duration.ofMinutes(1),
                    "checker.running",
                    workplace))
        .isInstanceOf(RefusalException.class);
    assertThat(run.folder().path()).doesNotExist();
  }

  /** A shell and Java alike give 128 and the number of the signal that ended a process. */
  @Test
  void tellsThatTheProcessWasKilled() throws Exception {
    CheckerRun run = start(Endless.class);
    run.process().destroyForcibly();
    List<String> refusals = new ArrayList<>();

    run.then(
        output -> {
          assertThat(output.isDone()).isFalse();
          refusals.add(output.refusal("checker.failed", Path.of("a"), "b").getMessage());
        },
        Duration.ofMinutes(1),
        "checker.running",
        workplace);

    assertThat(refusals).containsExactly("checker.killed");
  }

  /** 1 and nothing written is how Java ends that cannot start; 134 how it ends that breaks down. */
  @ParameterizedTest
  @CsvSource({
    "2, checker.failed",
    "1, checker.crashed",
    "0, checker.crashed",
    "3, checker.crashed",
    "134, checker.killed",
    "137, checker.killed",
    "143, checker.killed",
    "-1073741819, checker.crashed"
  })
  void takesACrashForACrash(int status, String key) {
    CheckerRun.Output output = new CheckerRun.Output(status, "", "");

    assertThat(output.refusal("checker.failed", Path.of("a"), "b")).hasMessage(key);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "{",
        "# A fatal error has been detected by the Java Runtime Environment:",
        "{\"format\": 1, \"files\": []}",
        "{\"format\": 2, \"files\": [{\"file\": \"a\", \"findings\": []}]}",
        "{\"format\": 1, \"files\": [{\"file\": \"a\", \"findings\": [{\"rule\": \"x\""
      })
  void findsNothingInAReportThatIsNotWhole(String json) {
    assertThat(Report.file(json)).isEmpty();
  }

  private static CheckerRun start(Class<?> program) throws Exception {
    TemporaryFolder folder = TemporaryFolder.create();
    Files.writeString(folder.file("workbook.ods"), "a copy");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                Path.of(
                        CheckerRunTest.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString(),
                program.getName())
            .redirectOutput(folder.file(CheckerRun.OUT).toFile())
            .redirectError(folder.file(CheckerRun.ERR).toFile())
            .start();
    return new CheckerRun(process, folder);
  }
}
