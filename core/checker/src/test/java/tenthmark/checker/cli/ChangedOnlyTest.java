package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.workbook.Grid;

/** {@code --changed-only} and the reports that are there already. Students are invented. */
class ChangedOnlyTest {

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path handedIn;
  private Path reports;

  @BeforeEach
  void workbooks() throws IOException {
    handedIn = Files.createDirectories(folder.resolve("handed-in"));
    reports = folder.resolve("reports");
    // No unit.
    workbook("ada.xlsx", null, "Fine marks, two ends.");
    // No reason.
    workbook("ben.xlsx", "mm", null);
  }

  private void workbook(String name, String unit, String reason) {
    Grid.sheet("Bench")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("Crank arm", 172.5, unit, 0.5, reason)
        .xlsx(handedIn.resolve(name));
  }

  private int check(String... options) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    List<String> line = new ArrayList<>(List.of("check", "--out", reports.toString()));
    line.addAll(List.of(options));
    line.add(handedIn.toString());
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(line.toArray(String[]::new));
  }

  private String profile(String yaml) throws IOException {
    return Files.writeString(folder.resolve("course.yaml"), yaml).toString();
  }

  private List<Path> reports() throws IOException {
    try (Stream<Path> files = Files.walk(reports.resolve("workbooks"))) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** What the instructor gets. */
  private List<Path> ofTheClass() throws IOException {
    try (Stream<Path> files = Files.walk(reports)) {
      return files
          .filter(file -> !file.startsWith(reports.resolve("workbooks")))
          .filter(file -> !file.startsWith(reports.resolve("kept")))
          .filter(file -> file.toString().matches(".*\\.(html|csv|json|xml|zip)"))
          .sorted()
          .toList();
    }
  }

  private String page(String workbook) throws IOException {
    return Files.readString(reports.resolve("workbooks").resolve(workbook + "/feedback.html"));
  }

  /** What tells a file that was written anew: another time. */
  private List<Object> keys() throws IOException {
    return keys(reports());
  }

  private List<Object> keys(List<Path> all) throws IOException {
    List<Object> keys = new ArrayList<>();
    for (Path report : all) {
      keys.add(List.of(reports.relativize(report), Files.getLastModifiedTime(report)));
    }
    return keys;
  }

  @Nested
  class NothingChanged {

    @Test
    void noReportIsWrittenAnew() throws Exception {
      check();
      List<Object> before = keys();

      assertThat(check("--changed-only")).isEqualTo(1);

      assertThat(keys()).isEqualTo(before).hasSize(4);
      assertThat(err.toString()).contains("2 unchanged since the last check");
    }

    @Test
    void noPageWithAGradeIsWrittenAnew() throws Exception {
      String roster =
          Files.writeString(folder.resolve("roster.csv"), "id,name\n1,Ada\n2,Ben\n").toString();
      String profile = profile("submissions: '{name}'\n");
      check("--profile", profile, "--roster", roster);
      List<Object> before = keys();
      List<Object> ofTheClass = keys(ofTheClass());
      assertThat(page("ada.xlsx")).contains("id=\"grade\"");

      check("--changed-only", "--profile", profile, "--roster", roster);

      assertThat(keys()).isEqualTo(before).hasSize(4);
      assertThat(keys(ofTheClass())).isEqualTo(ofTheClass).hasSize(7);
    }

    @Test
    void theReportsOnTheClassAreWrittenAnewWhereOneWorkbookIsNew() throws Exception {
      check();
      List<Object> before = keys(ofTheClass());
      workbook("cy.xlsx", "mm", "Fine marks, two ends.");

      check("--changed-only");

      assertThat(keys(ofTheClass())).doesNotContainAnyElementsOf(before).hasSize(4);
    }

    @Test
    void gradesOfACheckWithARosterDoNotStayBehind() throws Exception {
      String roster =
          Files.writeString(folder.resolve("roster.csv"), "id,name\n1,Ada\n").toString();
      check("--roster", roster);
      assertThat(reports.resolve("grades.csv")).exists();

      check("--changed-only");

      assertThat(reports.resolve("grades.csv")).doesNotExist();
      assertThat(reports.resolve("students.html")).doesNotExist();
      assertThat(reports.resolve("sections")).doesNotExist();
    }

    @Test
    void withoutTheOptionAllAre() throws Exception {
      check();
      List<Object> before = keys();

      check();

      assertThat(keys()).doesNotContainAnyElementsOf(before);
    }
  }

  @Nested
  class AReport {

    @Test
    void isWrittenAnewInAnotherLanguage() throws Exception {
      check();

      check("--changed-only", "--language", "de");

      assertThat(page("ada.xlsx")).contains("lang=\"de\"");
    }

    @Test
    void isWrittenAnewWhereItIsGoneOrChanged() throws Exception {
      check();
      String before = page("ada.xlsx");
      Files.delete(reports.resolve("workbooks/ada.xlsx/ada.xlsx"));
      Files.writeString(reports.resolve("workbooks/ada.xlsx/feedback.html"), "another page");

      check("--changed-only");

      assertThat(reports.resolve("workbooks/ada.xlsx/ada.xlsx")).isNotEmptyFile();
      assertThat(page("ada.xlsx")).hasSameSizeAs(before);
    }

    @Test
    void ofACheckThatWasStoppedIsWrittenAnew() throws Exception {
      check();
      Files.writeString(reports.resolve(".tenthmark-written"), "{\"report\":\"");
      List<Object> before = keys();

      check("--changed-only");

      assertThat(keys()).doesNotContainAnyElementsOf(before);
    }

    @Test
    void ofAWorkbookThatChangedIsWrittenAnew() throws Exception {
      check();
      assertThat(page("ada.xlsx")).contains("class=\"finding");
      workbook("ada.xlsx", "mm", "Fine marks, two ends.");

      assertThat(check("--changed-only")).isEqualTo(1);

      assertThat(page("ada.xlsx")).doesNotContain("class=\"finding");
      assertThat(err.toString()).contains("1 unchanged since the last check");
    }
  }

  @Nested
  class AnotherGrading {

    @Test
    void needsNoWorkbookReadAgain() throws Exception {
      check("--profile", profile("rules: {unit-missing: {points: 1}}\n"));
      assertThat(out.toString()).contains("unit-missing");

      check("--changed-only", "--profile", profile("rules: {unit-missing: {points: 2.5}}\n"));

      assertThat(err.toString()).contains("2 unchanged since the last check");
      assertThat(Files.readString(reports.resolve("gradebook.csv")))
          .contains("\"ada.xlsx\",\"yes\",\"1\",\"0\",\"1\",\"0\",\"0\",\"2.5\"");
    }

    @Test
    void appliesRulesThatWereSwitchedOff() throws Exception {
      check("--profile", profile("rules: {unit-missing: {severity: none}}\n"));
      assertThat(out.toString()).doesNotContain("unit-missing");

      check("--changed-only", "--profile", profile("language: en\n"));

      assertThat(out.toString()).contains("unit-missing");
      assertThat(err.toString()).contains("2 unchanged since the last check");
    }

    @Test
    void isNamedByEachPageAndCopy() throws Exception {
      check("--profile", profile("rules: {unit-missing: {points: 1}}\n"));
      List<Object> before = keys();

      check("--changed-only", "--profile", profile("rules: {unit-missing: {points: 2}}\n"));

      assertThat(keys()).hasSize(4).doesNotContainAnyElementsOf(before);
      assertThat(page("ben.xlsx")).contains("course.yaml");
    }

    @Test
    void isTheSameAsThatOfAWholeCheck() throws Exception {
      check("--profile", profile("rules: {unit-missing: {severity: note, points: 1}}\n"));
      String profile = profile("rules: {rationale-missing: {severity: error, points: 3}}\n");
      check("--changed-only", "--profile", profile);
      String regraded = Files.readString(reports.resolve("findings.json"));

      check("--profile", profile);

      assertThat(reports.resolve("findings.json")).hasContent(regraded.strip());
    }
  }

  @Nested
  class AWorkbookThatIsGone {

    @Test
    void leavesItsReportsInAFolderOfTheirOwn() throws Exception {
      check();
      Files.delete(handedIn.resolve("ben.xlsx"));

      check("--changed-only");

      assertThat(reports.resolve("workbooks/ben.xlsx")).doesNotExist();
      assertThat(reports.resolve("gone/ben.xlsx/feedback.html")).isNotEmptyFile();
      assertThat(reports.resolve("gone/ben.xlsx/ben.xlsx")).isNotEmptyFile();
      assertThat(err.toString())
          .contains(handedIn.resolve("ben.xlsx") + ": is gone; its report is now");
      check("--changed-only");
      assertThat(err.toString()).doesNotContain("is gone");
    }

    @Test
    void leavesWhatOthersPutThere() throws Exception {
      check();
      Files.delete(handedIn.resolve("ben.xlsx"));
      Path note = Files.writeString(reports.resolve("workbooks/ben.xlsx/note.txt"), "ask Ben");
      Path page = reports.resolve("workbooks/ben.xlsx/feedback.html");
      Files.writeString(page, "changed by hand");

      check();

      assertThat(note).hasContent("ask Ben");
      assertThat(page).hasContent("changed by hand");
    }

    @Test
    void isNotOneThatIsNotCheckedThisTime() throws Exception {
      check();
      handedIn = handedIn.resolve("ada.xlsx");

      check();

      assertThat(reports.resolve("workbooks/ben.xlsx/feedback.html")).isNotEmptyFile();
    }
  }

  @Test
  void theFileOfResultsBelongsToOneCheckAtATime() throws Exception {
    Path state = folder.resolve("state.jsonl");
    try (FileChannel channel =
        FileChannel.open(state, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.lock();

      assertThat(check("--state", state.toString())).isEqualTo(2);
    }

    assertThat(err.toString()).contains(state + ": cannot be read or written: another check");
  }
}
