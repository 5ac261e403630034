package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.submission.Zip;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class SubmissionsTest {

  private static final String JANE =
      "Doe_Jane_12345_attempt_2026-09-14-10-33-05_Lab 3 (final)(2).xlsx";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... arguments) {
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
  }

  private byte[] workbook(String unit) throws IOException {
    Path file =
        Grid.sheet("Bench")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Crank arm", 172.5, unit, 0.5, "Fine marks, two ends.")
            .xlsx(folder.resolve("made.xlsx"));
    byte[] content = Files.readAllBytes(file);
    Files.delete(file);
    return content;
  }

  private Path section(String name) throws IOException {
    return new Zip()
        .with(JANE, workbook(null))
        .with("Brook_Ada_10001/lab/bench.xlsx", workbook("mm"))
        .with("Castle_Ben_10002_report.pdf", "a photograph")
        .write(folder.resolve(name));
  }

  @Nested
  class AnArchive {

    @Test
    void isCheckedAsItIs() throws IOException {
      Path zip = section("section 1.zip");

      assertThat(run("check", zip)).isEqualTo(1);

      assertThat(out.toString())
          .contains(zip.resolve(JANE) + ": Bench.C2: error unit-missing")
          .contains(zip.resolve("Brook_Ada_10001/lab/bench.xlsx") + ": 0 errors")
          .contains("2 files checked");
    }

    @Test
    void isFoundInAFolder() throws IOException {
      Path in = Files.createDirectory(folder.resolve("in"));
      Files.move(section("one.zip"), in.resolve("one.zip"));
      Files.move(section("two.zip"), in.resolve("two.zip"));

      assertThat(run("check", in)).isEqualTo(1);

      assertThat(out.toString()).contains("4 files checked");
    }

    @Test
    void namesStrays() throws IOException {
      Path zip = section("s.zip");
      run("check", zip);

      assertThat(err.toString())
          .contains(zip.resolve("Castle_Ben_10002_report.pdf") + ": not checked: not a workbook");
    }

    @Test
    void hasReportsUnderTheNamesThatCameIn() throws IOException {
      Path reports = folder.resolve("reports");

      run("check", "--out", reports, section("one.zip"), section("two.zip"));

      Path jane = reports.resolve("workbooks").resolve("one.zip").resolve(JANE);
      assertThat(jane.resolve("feedback.html")).content().contains("C2: error unit-missing");
      assertThat(jane.resolve(JANE)).isNotEmptyFile();
      assertThat(reports.resolve("workbooks/two.zip/Brook_Ada_10001/lab/bench.xlsx/bench.xlsx"))
          .isNotEmptyFile();
      assertThat(reports.resolve("findings.json")).content().contains("one.zip");
    }

    @Test
    void isRecognisedByTheContentOfItsFilesTheNextTime() throws IOException {
      Path reports = folder.resolve("reports");
      Path zip = section("one.zip");
      run("check", "--out", reports, zip);

      run("check", "--changed-only", "--out", reports, zip);

      assertThat(err.toString()).contains("2 unchanged since the last check");
    }

    @ParameterizedTest
    @ValueSource(strings = {"no archive", ""})
    void thatIsNoneIsNamedAndTheOthersAreChecked(String content) throws IOException {
      Path damaged = Files.writeString(folder.resolve("a.zip"), content);

      assertThat(run("check", damaged, section("b.zip"))).isEqualTo(2);

      assertThat(err.toString()).contains(damaged + ": ", "the archive is damaged or cut short");
      assertThat(out.toString()).contains("1 could not be checked");
    }
  }

  @Test
  void filesOfTheCommandLineAreNoStrays() throws IOException {
    Path in = Files.createDirectory(folder.resolve("in"));
    Files.write(in.resolve("lab.xlsx"), workbook("mm"));
    Path profile = Files.writeString(in.resolve("course.yaml"), "course: Bench\n");

    run("check", "--profile", profile, "--state", in.resolve("state.jsonl"), in);
    run("check", "--profile", profile, "--state", in.resolve("state.jsonl"), in);

    assertThat(err.toString()).isEmpty();
  }
}
