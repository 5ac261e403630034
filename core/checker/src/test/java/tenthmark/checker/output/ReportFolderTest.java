package tenthmark.checker.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Unwritten;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class ReportFolderTest {

  @TempDir Path folder;

  private Path workbook(String name, String quantity) throws IOException {
    Path file = folder.resolve("in").resolve(name);
    Files.createDirectories(file.getParent());
    return Grid.sheet("Bench")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row(quantity, 172.5, null, 0.5, "Fine marks, two ends.")
        .xlsx(file);
  }

  private Path write(Path... files) throws Exception {
    Path out = folder.resolve("out");
    ReportFolder reports =
        new ReportFolder(out, List.of(files), FileChecker.load(), CheckerTexts.english());
    for (Path file : files) {
      reports.write(FileChecker.load().check(file));
    }
    return out;
  }

  private static List<String> pages(Path out) throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      return files
          .filter(file -> file.endsWith("feedback.html"))
          .map(file -> out.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void isLaidOutAsTheWorkbooksAre() throws Exception {
    Path out =
        write(
            workbook("group 1/ada.xlsx", "Spoke"),
            workbook("group 1/ben.xlsx", "Crank arm"),
            workbook("group 2/ada.xlsx", "Grip"));

    assertThat(pages(out))
        .containsExactly(
            "workbooks/group 1/ada.xlsx/feedback.html",
            "workbooks/group 1/ben.xlsx/feedback.html",
            "workbooks/group 2/ada.xlsx/feedback.html");
  }

  @Test
  void showsAStudentNothingOfAnother() throws Exception {
    Path out = write(workbook("ada.xlsx", "Spoke"), workbook("ben.xlsx", "Crank arm"));

    String ada = Files.readString(out.resolve("workbooks/ada.xlsx/feedback.html"));
    assertThat(ada).contains("Spoke").doesNotContain("Crank arm", "ben.xlsx");
  }

  @Test
  void linksFromTheClassToEachPageWhateverItsName() throws Exception {
    Path ada = workbook("group #1/50% ü?.xlsx", "Spoke");
    Path ben = workbook("ben.xlsx", "Spoke");
    Path out = write(ada, ben);
    ReportFolder reports =
        new ReportFolder(out, List.of(ada, ben), FileChecker.load(), CheckerTexts.english());

    reports.writeClass(List.of(FileChecker.load().check(ada), FileChecker.load().check(ben)));

    List<String> links =
        Jsoup.parse(Files.readString(out.resolve("class.html")))
            .select("#workbooks tbody a")
            .eachAttr("href");
    assertThat(links)
        .hasSize(2)
        .allSatisfy(link -> assertThat(Path.of(out.toUri().resolve(link))).isNotEmptyFile());
  }

  @Test
  void leavesNothingUnfinished() throws Exception {
    Path out = write(workbook("ada.xlsx", "Spoke"));
    write(workbook("ada.xlsx", "Spoke"));

    try (Stream<Path> files = Files.walk(out)) {
      assertThat(files.map(Path::toString)).noneMatch(name -> name.contains(".part"));
    }
  }

  @Test
  void knowsWhatLiesInIt() {
    assertThat(ReportFolder.holds(Path.of("out"), Path.of("out/workbooks/ada.xlsx"))).isTrue();
    assertThat(ReportFolder.holds(Path.of("out"), Path.of("in/../out/ada.xlsx"))).isTrue();
    assertThat(ReportFolder.holds(Path.of("out"), Path.of("outer/ada.xlsx"))).isFalse();
  }

  /** What may go wrong within one report is as good as a number that no chart can show. */
  @Test
  void writesTheOtherReportsOnTheClassWhateverGoesWrongWithOne() throws Exception {
    Path ada = workbook("ada.xlsx", "Spoke");
    Path out = write(ada);
    FileReport report =
        FileReport.checked(
            ada,
            new Contents(
                List.of(),
                List.of(),
                CoverageSummary.NONE,
                List.of(),
                List.of(),
                List.of(Double.NaN)),
            List.of());

    List<Unwritten> unwritten =
        new ReportFolder(out, List.of(ada), FileChecker.load(), CheckerTexts.english())
            .writeClass(List.of(report));

    assertThat(unwritten)
        .singleElement()
        .satisfies(
            missing -> {
              assertThat(missing.line())
                  .startsWith("class.html cannot be written: the checker itself failed");
              assertThat(missing.incomplete()).isTrue();
            });
    assertThat(List.of("gradebook.csv", "findings.json", "junit.xml"))
        .allSatisfy(name -> assertThat(out.resolve(name)).isNotEmptyFile());
  }

  @Test
  void leavesNoAnnotatedCopyOfAnEarlierCheckWhereThereIsNoneAnyMore() throws Exception {
    Path ada = workbook("ada.xlsx", "Spoke");
    Path out = write(ada);
    Files.writeString(ada, "no workbook any more");

    write(ada);

    assertThat(out.resolve("workbooks/ada.xlsx/feedback.html")).isNotEmptyFile();
    assertThat(out.resolve("workbooks/ada.xlsx/ada.xlsx")).doesNotExist();
  }
}
