package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.checker.remark.RemarksFile;
import tenthmark.checker.submission.Zip;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.WorkbookFile;

/** A section of four, by the command line alone. Students and numbers are invented. */
class GradesTest {

  private static final String FIRST = "_attempt_2026-09-14-10-33-05_Lab 3.xlsx";
  private static final String SECOND = "_attempt_2026-09-15-08-00-00_Lab 3 (final)(2).xlsx";

  private static final String PROFILE =
      """
      submissions: underscore-separated
      roster: {id: Number, name: [First, Last], section: Group}
      grades:
        maximum: 10
        columns: {Number: id, Student: name, Group: section, Lab 3: score, Out of: maximum,
                  Lost: points-lost, Note: status}
      rules:
        unit-missing: {points: 1}
        rationale-missing: {points: 0.5}
      """;

  private static final String ROSTER =
      """
      Number;Last;First;Group
      10001;Brook;Ada;Tue
      10002;Castle;Ben;Tue
      10003;Dunn;Cleo;Wed
      10004;Ellis;Dov;Wed
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private Path zip;
  private Path reports;
  private Path profile;
  private Path roster;

  @BeforeEach
  void handIn() throws IOException {
    zip =
        new Zip()
            .with("Brook_Ada_10001" + FIRST, workbook(null, null))
            .with("Brook_Ada_10001" + SECOND, workbook(null, "Fine marks, two ends."))
            .with("Castle_Ben_10002_attempt_2026-09-14-11-00-00_report.pdf", "a photograph")
            .with("Dunn_Cleo_10003" + FIRST, workbook("mm", "Fine marks, two ends."))
            .with("Frost_Dina_99999" + FIRST, workbook("mm", "Fine marks, two ends."))
            .write(folder.resolve("section.zip"));
    reports = folder.resolve("reports");
    profile = Files.writeString(folder.resolve("lab-3.yaml"), PROFILE);
    roster = Files.writeString(folder.resolve("roster.csv"), ROSTER);
  }

  private byte[] workbook(String unit, String rationale) throws IOException {
    Path file =
        Grid.sheet("Bench")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Crank arm", 172.5, unit, 0.5, rationale)
            .xlsx(folder.resolve("made.xlsx"));
    byte[] content = Files.readAllBytes(file);
    Files.delete(file);
    return content;
  }

  private int check(Object... more) {
    List<Object> arguments =
        new ArrayList<>(
            List.of("check", zip, "--profile", profile, "--roster", roster, "--out", reports));
    arguments.addAll(Arrays.asList(more));
    return Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments.stream().map(Object::toString).toArray(String[]::new));
  }

  private List<String> grades() throws IOException {
    return Files.readAllLines(reports.resolve("grades.csv"));
  }

  private Document page(String name) throws IOException {
    return Jsoup.parse(
        Files.readString(
            reports
                .resolve("workbooks")
                .resolve("section.zip")
                .resolve(name)
                .resolve("feedback.html")));
  }

  @Nested
  class TheTable {

    @Test
    void hasARowForEachStudentInTheColumnsOfTheProfile() throws IOException {
      check();

      assertThat(grades())
          .containsExactly(
              "\"Number\",\"Student\",\"Group\",\"Lab 3\",\"Out of\",\"Lost\",\"Note\"",
              "\"10001\",\"Ada Brook\",\"Tue\",\"9\",\"10\",\"1\",\"checked\"",
              "\"10002\",\"Ben Castle\",\"Tue\",\"\",\"10\",\"\",\"no workbook:"
                  + " Castle_Ben_10002_attempt_2026-09-14-11-00-00_report.pdf\"",
              "\"10003\",\"Cleo Dunn\",\"Wed\",\"10\",\"10\",\"0\",\"checked\"",
              "\"10004\",\"Dov Ellis\",\"Wed\",\"\",\"10\",\"\",\"nothing handed in\"",
              "\"99999\",\"Dina Frost\",\"\",\"10\",\"10\",\"0\",\"checked, not on the roster\"");
    }

    @Test
    void runsNoFormulas() throws IOException {
      Files.writeString(roster, ROSTER.replace("Dunn", "=cmd()"));

      check();

      assertThat(grades().get(3)).contains("\"Cleo =cmd()\"");
      assertThat(grades()).noneMatch(row -> row.contains("\"="));
    }
  }

  @Test
  void whoIsMissingIsNamedInALineEach() {
    check();

    assertThat(err.toString().lines())
        .contains(
            roster
                + ": Ben Castle (10002) handed in no workbook but"
                + " Castle_Ben_10002_attempt_2026-09-14-11-00-00_report.pdf",
            roster + ": Dov Ellis (10004) handed in no workbook",
            roster + ": Dina Frost (99999) is not on the roster");
  }

  @Test
  void theInstructorSeesItOnAPage() throws IOException {
    check();

    Document page = Jsoup.parse(Files.readString(reports.resolve("students.html")));
    assertThat(page.select("header p").text())
        .contains("checked: 3", "nothing handed in: 1", "no workbook handed in: 1");
    assertThat(page.select("#students tbody tr").get(0).children().eachText())
        .containsExactly("Ada Brook (10001)", "Tue", "checked", "2", "1", "0", "1", "1", "9");
    assertThat(page.select("#missing li").eachText())
        .containsExactly(
            "Ben Castle (10002): sent Castle_Ben_10002_attempt_2026-09-14-11-00-00_report.pdf",
            "Dov Ellis (10004)");
    assertThat(page.select("#students a").attr("href"))
        .startsWith("workbooks/section.zip/Brook_Ada_10001_attempt_2026-09-15");
  }

  @Nested
  class TheClassPage {

    private byte[] bench(String name) throws IOException {
      Path file =
          Grid.sheet("Bench")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Crank arm", 172.53, "mm", 0.5, name)
              .row("Spoke", 262.17, "mm", 0.5, name)
              .row("Grip", 31.46, "mm", 0.5, name)
              .row("Rim", 559.81, "mm", 0.5, name)
              .row("Hub", 100.74, "mm", 0.5, name)
              .row("Axle", 141.29, "mm", 0.5, name)
              .row("Pedal", 98.37, "mm", 0.5, name)
              .xlsx(folder.resolve("made.xlsx"));
      byte[] content = Files.readAllBytes(file);
      Files.delete(file);
      return content;
    }

    @Test
    void isAboutTheNewestAttemptsAndTakesNoOwnAttemptForACopy() throws IOException {
      zip =
          new Zip()
              .with("Brook_Ada_10001" + FIRST, bench("One."))
              .with("Brook_Ada_10001" + SECOND, bench("Two."))
              .with("Castle_Ben_10002_Lab 3.xlsx", bench("Three."))
              .with("Castle_Ben_10002_Lab 3 again.xlsx", bench("Four."))
              .write(folder.resolve("section.zip"));
      check();

      Document page = Jsoup.parse(Files.readString(reports.resolve("class.html")));
      assertThat(page.select("#workbooks tbody tr")).hasSize(3);
      assertThat(page.select("#shared tbody tr").eachText())
          .hasSize(2)
          .allMatch(row -> row.contains("Brook_Ada") && row.contains("Castle_Ben"));
    }
  }

  @Nested
  class TheStudentsPage {

    @Test
    void saysWhichAttemptCountsAndWhatIsMended() throws IOException {
      check();

      assertThat(page("Brook_Ada_10001" + SECOND).select("#grade").text())
          .contains(
              "Of 2 attempts this is the newest",
              "9 out of 10: 1 off",
              "Since the attempt before: mended 1, new 0, still there 1.",
              "Mended: Bench.E2 rationale-missing");
      assertThat(page("Brook_Ada_10001" + FIRST).select("#grade").text())
          .contains("A later attempt counts")
          .doesNotContain("out of");
    }

    @ParameterizedTest
    @CsvSource({"de, Von 2 Versuchen ist dies der neueste", "fr, De 2 essais", "es, De 2 intentos"})
    void speaksTheLanguageOfTheCourse(String language, String text) throws IOException {
      check("--language", language);

      assertThat(page("Brook_Ada_10001" + SECOND).select("#grade").text()).contains(text);
    }

    /** SHA-256 as FIPS 180-4 has it, by the platform's own digest. */
    @Test
    void bearsProfileFingerprintDateAndVersion() throws Exception {
      check();

      byte[] digest =
          java.security.MessageDigest.getInstance("SHA-256")
              .digest(PROFILE.getBytes(StandardCharsets.UTF_8));
      String fingerprint = java.util.HexFormat.of().formatHex(digest).substring(0, 12);
      assertThat(page("Dunn_Cleo_10003" + FIRST).select("footer").text())
          .containsPattern(
              "Checked on \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d by the profile lab-3.yaml of"
                  + " \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d, fingerprint "
                  + fingerprint)
          .contains("tenthmark-checker ");
      assertThat(Files.readString(reports.resolve("class.html"))).contains(fingerprint);
    }
  }

  /** Whoever contests a grade is shown by what it was made, in the copy as on the page. */
  @Test
  void annotatedCopiesBearProfileFingerprintAndDateToo() throws Exception {
    check();
    Path copy =
        reports.resolve("workbooks").resolve("section.zip").resolve("Dunn_Cleo_10003" + FIRST);

    List<String> said =
        WorkbookFile.read(copy.resolve("Dunn_Cleo_10003" + FIRST)).sheets().stream()
            .flatMap(Sheet::cells)
            .filter(cell -> cell.content() instanceof Content.Text)
            .map(cell -> ((Content.Text) cell.content()).text())
            .toList();

    assertThat(said)
        .anyMatch(line -> line.matches("Checked on .* by the profile lab-3\\.yaml of .*"));
  }

  @Test
  void theFilesThatDecideGradesAreKeptWithTheReportsAndStayWhenTheyChange() throws Exception {
    Path remarks = Files.writeString(folder.resolve("remarks.csv"), RemarksFile.headings());
    check("--remarks", remarks);
    Files.writeString(profile, PROFILE + "course: changed\n");
    check("--remarks", remarks);

    try (Stream<Path> kept = Files.walk(reports.resolve("kept"))) {
      assertThat(kept.filter(Files::isRegularFile).map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("lab-3.yaml", "lab-3.yaml", "remarks.csv", "roster.csv");
    }
    Document page = page("Dunn_Cleo_10003" + FIRST);
    assertThat(page.select("footer").text())
        .containsPattern(
            "Remarks of the instructor: remarks\\.csv of .*, fingerprint [0-9a-f]{12}");
  }

  /** What the button writes is tried in a browser by PagesInChromiumIT. */
  @Test
  void thePageOfTheStudentsHoldsARemarkForEachFindingAndThoseThatAreThere() throws Exception {
    Path remarks =
        Files.writeString(
            folder.resolve("remarks.csv"),
            RemarksFile.headings()
                + "10001,unit-missing,Bench.C2,0,Said on the bench.\r\n"
                + "10001,,,0.25,Late.\r\n"
                + "10003,total-differs,Bench.A1,0,Not there any more.\r\n"
                + "70000,,,1,Nobody.\r\n");
    check("--remarks", remarks);

    Document students = Jsoup.parse(Files.readString(reports.resolve("students.html")));

    assertThat(students.select(".remark").stream().map(GradesTest::remark))
        .contains(
            "10001 unit-missing Bench.C2 0 Said on the bench.",
            "10001   0.25 Late.",
            "10003 total-differs Bench.A1 0 Not there any more.",
            "70000   1 Nobody.");
    assertThat(students.select("script")).hasSize(1);
    assertThat(students.select("meta[http-equiv]").attr("content"))
        .containsPattern("script-src 'sha256-[A-Za-z0-9+/]{43}='");
  }

  private static String remark(Element box) {
    return String.join(
        " ",
        box.attr("data-student"),
        box.attr("data-rule"),
        box.attr("data-cell"),
        box.select("[name=points]").attr("value"),
        box.select("[name=because]").attr("value"));
  }

  @Test
  void eachSectionHasAnArchiveUnderTheNamesThatCameIn() throws IOException {
    check();

    try (ZipFile tue = new ZipFile(reports.resolve("sections/Tue.zip").toFile())) {
      assertThat(tue.stream().map(ZipEntry::getName))
          .containsExactly("Brook_Ada_10001" + SECOND, "Brook_Ada_10001" + SECOND + ".html");
      String page =
          new String(
              tue.getInputStream(tue.getEntry("Brook_Ada_10001" + SECOND + ".html")).readAllBytes(),
              StandardCharsets.UTF_8);
      assertThat(page).contains("9 out of 10");
    }
    assertThat(reports.resolve("sections/Wed.zip")).exists();
    assertThat(reports.resolve("sections/without-section.zip")).exists();
  }

  @Nested
  class Remarks {

    private Path remarks(String rows) throws IOException {
      return Files.writeString(
          folder.resolve("remarks.csv"), "student,rule,cell,points,because\n" + rows);
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "10001,unit-missing,Bench.C2,0,The unit stands above.   | 10 | 0",
          "10001,unit-missing,,0.25,Half said.                    | 9.75 | 0.25",
          "10001,,,2,Handed in late.                              | 7 | 3",
          "ada brook,unit-missing,bench!$C$2,0,By name.           | 10 | 0",
          "10001,,,99,Handed in very late.                        | 0 | 100"
        })
    void waiveLowerAndAdd(String row, String score, String lost) throws IOException {
      check("--remarks", remarks(row + "\n"));

      assertThat(grades().get(1)).contains("\"" + score + "\",\"10\",\"" + lost + "\"");
    }

    @Test
    void standOnTheStudentsPageAndSurviveTheNextCheck() throws IOException {
      Path file = remarks("10001,unit-missing,Bench.C2,0,The unit stands above.\n");
      String content = Files.readString(file);
      check("--remarks", file);

      check("--remarks", file, "--changed-only");

      assertThat(page("Brook_Ada_10001" + SECOND).select("#grade").text())
          .contains("10 out of 10", "Bench.C2 unit-missing 0 The unit stands above.");
      assertThat(file).hasContent(content);
      assertThat(err.toString()).contains("unchanged since").doesNotContain("stale");
    }

    @Test
    void thatFitNothingAreReported() throws IOException {
      Path file =
          remarks("10001,rationale-missing,Bench.E2,0,Said aloud.\n88888,,,1,Who is that?\n");

      check("--remarks", file);

      assertThat(err.toString())
          .contains(
              file + ": row 2: the remark on 10001 is stale: the newest workbook has no such",
              file + ": row 3: the remark on 88888 is stale: there is no such student");
      Document page = Jsoup.parse(Files.readString(reports.resolve("students.html")));
      assertThat(page.select("#stale li").eachText())
          .containsExactly(
              "Row 2: 10001, rationale-missing Bench.E2: the newest workbook has no such finding.",
              "Row 3: 88888: there is no such student.");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "10001,unit-mising,,0,x | row 2: there is no rule unit-mising; the command rules"
              + " prints them all",
          "10001,,,-1,x | row 2: the points must be a number of 0 or more, such as 0.5",
          "10001,,,1, | row 2: the sentence for the student is missing",
          ",,,1,x | row 2: the student is missing",
          "10001,,Bench.C2,1,x | row 2: a cell needs the rule of its finding"
        })
    void withAMistakeAreRefusedBeforeAnythingIsChecked(String row, String reason)
        throws IOException {
      Path file = remarks(row + "\n");

      assertThat(check("--remarks", file)).isEqualTo(2);

      assertThat(err.toString().strip()).isEqualTo(file + ": " + reason);
      assertThat(reports).doesNotExist();
    }
  }

  @Test
  void aRosterThatIsNotThereIsNamed() {
    assertThat(check("--remarks", folder.resolve("none.csv"))).isEqualTo(2);

    assertThat(err.toString().strip())
        .isEqualTo(folder.resolve("none.csv") + ": no such file or folder");
  }
}
