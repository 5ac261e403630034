package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.classroom.Distribution;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.course.Course;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.roster.Register;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class ClassPageTest {

  @TempDir Path folder;

  private FileReport report(String name, String quantity, double... values) {
    Grid grid =
        Grid.sheet("Bench").row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale");
    for (int i = 0; i < values.length; i++) {
      grid.row(quantity + " " + i, "L" + i, values[i], i == 0 ? null : "mm", 0.5, "Fine marks.");
    }
    return FileChecker.load().check(grid.xlsx(folder.resolve(name)));
  }

  private static Document page(List<FileReport> reports) {
    return Jsoup.parse(
        ClassPage.of(
            reports,
            LeftOut.NOTHING,
            Course.PLAIN,
            Register.NONE,
            Optional.empty(),
            CheckerTexts.english(),
            file -> file.getFileName().toString(),
            file -> "to/" + file.getFileName()));
  }

  private static List<String> cells(Element row) {
    return row.select("td").stream().map(Element::text).toList();
  }

  private Document threeStudents() {
    double[] data = {172.5, 262.4, 131.2, 123.4, 124.1, 122.9};
    return page(
        List.of(
            report("ada.xlsx", "Length", data),
            report("ben.xlsx", "Length", 172.4, 262.5, 131.1, 123.3, 124.2, 122.8),
            report("cleo.xlsx", "Length", data)));
  }

  @Test
  void countsFindingsAndWorkbooksByRule() {
    assertThat(threeStudents().select("#rules tbody tr"))
        .anySatisfy(row -> assertThat(cells(row)).startsWith("unit-missing", "error", "3", "3"));
  }

  @Test
  void showsWorkbooksByRulesAlikeOnesTogether() {
    FileReport clean =
        FileChecker.load()
            .check(
                Grid.sheet("Bench")
                    .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
                    .row("Crank arm", "L", 172.5, "mm", 0.5, "Fine marks at both ends.")
                    .xlsx(folder.resolve("dev.xlsx")));
    FileReport noReason =
        FileChecker.load()
            .check(
                Grid.sheet("Bench")
                    .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
                    .row("Crank arm", "L", 173.5, "mm", 0.5, null)
                    .xlsx(folder.resolve("ben.xlsx")));
    Element matrix =
        page(List.of(
                report("ada.xlsx", "Length", 172.5, 262.4),
                noReason,
                report("cleo.xlsx", "Width", 131.2, 123.4),
                clean,
                FileReport.unchecked(Path.of("eve.ods"), "the file is empty")))
            .selectFirst("#matrix");

    assertThat(matrix.select("thead th").eachText())
        .containsExactly("Workbook", "unit-missing", "rationale-missing");
    assertThat(matrix.select("tbody tr").eachText())
        .containsExactly("ada.xlsx 1 error", "cleo.xlsx 1 error", "ben.xlsx 1 warning");
    assertThat(matrix.select("p").text())
        .isEqualTo("1 workbook has nothing to mend and is left out.");
  }

  @Test
  void hasALineForEachWorkbookThatLinksToItsPage() {
    Document page = threeStudents();

    assertThat(page.select("#workbooks tbody a").eachAttr("href"))
        .containsExactly("to/ada.xlsx", "to/ben.xlsx", "to/cleo.xlsx");
  }

  @Test
  void namesTheWorkbooksInWhichNothingWasRead() {
    Path file =
        Grid.sheet("Bench").row("A").row(172.5).row(262.4).xlsx(folder.resolve("unread.xlsx"));

    Element workbooks = page(List.of(FileChecker.load().check(file))).selectFirst("#workbooks");

    assertThat(workbooks.select("p").text())
        .isEqualTo(
            "In 1 workbook no measurement record was recognised, so it was not checked:"
                + " unread.xlsx");
    assertThat(cells(workbooks.selectFirst("tbody tr")))
        .containsExactly("unread.xlsx", "1", "0", "1", "0", "0", "2");
  }

  @Test
  void saysWhatCouldNotBeChecked() {
    Document page = page(List.of(FileReport.unchecked(Path.of("dev.ods"), "the file is empty")));

    assertThat(page.select("#workbooks td").eachText())
        .containsExactly("dev.ods", "could not be checked: the file is empty");
  }

  @Test
  void showsPairsWithEqualRawDataAsAnObservation() {
    Element shared = threeStudents().selectFirst("#shared");

    assertThat(shared.text()).contains("an observation, not an accusation");
    assertThat(shared.select("tbody tr"))
        .singleElement()
        .satisfies(
            row ->
                assertThat(cells(row))
                    .containsExactly(
                        "ada.xlsx", "cleo.xlsx", "6", "172.5, 262.4, 131.2, 123.4, 124.1, 122.9"));
  }

  @Test
  void showsWhatAStudentTypesAndNeverRunsIt() {
    List<FileReport> reports = new ArrayList<>();
    for (String name : List.of("ada", "ben", "cleo")) {
      reports.add(report(name + ".xlsx", "</title><script>alert(1)</script>", 1, 2.25));
    }

    Document page = page(reports);

    assertThat(page.select("script")).isEmpty();
    assertThat(page.select("#quantities h3").text()).contains("<script>alert(1)</script>");
  }

  @Nested
  class AChart {

    private Elements chart(Optional<AcceptedValue> accepted, double... values) {
      List<Distribution.Value> all = new ArrayList<>();
      for (double value : values) {
        all.add(new Distribution.Value(Path.of("ada.ods"), value, Optional.of(0.5)));
      }
      Distribution distribution = new Distribution("length", "mm", accepted, all);
      Wording wording = new Wording(CheckerTexts.english());
      return Jsoup.parse(Chart.of("c", distribution, wording).render()).select("svg");
    }

    private static double x(Element element, String attribute) {
      return Double.parseDouble(element.attr(attribute));
    }

    @Test
    void hasATitleAndADescriptionForThoseWhoDoNotSeeIt() {
      Element chart = chart(Optional.of(new AcceptedValue(10, 0.5, 1)), 10, 11, 12).first();

      assertThat(chart.attr("role")).isEqualTo("img");
      assertThat(chart.attr("aria-labelledby")).isEqualTo("c-title c-text");
      assertThat(chart.getElementById("c-title").text()).isEqualTo("length");
      assertThat(chart.getElementById("c-text").text())
          .startsWith("3 values from 10 to 12 mm; accepted value 10 ± 0.5 mm.");
    }

    @Test
    void placesValuesBarsAndTheAcceptedValueOnOneScale() {
      Element chart = chart(Optional.of(new AcceptedValue(11, 0.5, 1)), 10, 11, 12).first();

      Elements values = chart.select("circle");
      Element middleBar = chart.select(".bar").get(1);
      double step = x(values.get(1), "cx") - x(values.get(0), "cx");
      assertThat(x(values.get(2), "cx") - x(values.get(1), "cx")).isCloseTo(step, within());
      assertThat(x(middleBar, "x2") - x(middleBar, "x1")).isCloseTo(step, within());
      assertThat(x(chart.selectFirst(".accepted"), "x1"))
          .isCloseTo(x(values.get(1), "cx"), within());
      assertThat(x(chart.selectFirst(".accepted-range"), "width")).isCloseTo(step, within());
    }

    @Test
    void drawsAValueFarFromTheOthersAtTheEdge() {
      Elements chart = chart(Optional.empty(), 10, 10.1, 10.2, 10.3, 10.4, 10.5, 1040);

      assertThat(chart.select("circle")).hasSize(6);
      assertThat(chart.select("polygon")).hasSize(1);
    }

    @Test
    void copesWithOneValueAndWithEqualValues() {
      assertThat(chart(Optional.empty(), 0).select("circle")).hasSize(1);
      assertThat(chart(Optional.empty(), 5, 5, 5).select("circle")).hasSize(3);
      assertThat(chart(Optional.empty(), 1e300, -1e300, 1e-300, Double.MAX_VALUE)).hasSize(1);
    }

    private static org.assertj.core.data.Offset<Double> within() {
      return org.assertj.core.data.Offset.offset(0.21);
    }
  }
}
