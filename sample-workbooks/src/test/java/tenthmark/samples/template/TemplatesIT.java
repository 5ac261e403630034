package tenthmark.samples.template;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.frame.XDocumentTemplates;
import com.sun.star.ucb.XSimpleFileAccess;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.samples.Saved;
import tenthmark.samples.plan.Copy;
import tenthmark.samples.plan.Places;

/** Templates as a student uses them, in a real Calc. */
@ExtendWith(OfficeExtension.class)
class TemplatesIT {

  private final Office office;

  TemplatesIT(Office office) {
    this.office = office;
  }

  static Stream<Arguments> withGraph() {
    return TemplatesTest.files()
        .filter(arguments -> ((Template) arguments.get()[0]).graph().isPresent());
  }

  static Stream<Arguments> blanks() {
    return TemplatesTest.blanks();
  }

  @Test
  void showInTheTemplatesDialogUnderOneHeading() throws Exception {
    String root =
        queryInterface(
                XDocumentTemplates.class, office.service("com.sun.star.frame.DocumentTemplates"))
            .getContent()
            .getIdentifier()
            .getContentIdentifier();
    XSimpleFileAccess shelves =
        queryInterface(
            XSimpleFileAccess.class, office.service("com.sun.star.ucb.SimpleFileAccess"));
    assertThat(shelves.getFolderContents(root + "/Tenthmark", false))
        .extracting(entry -> entry.substring(entry.lastIndexOf('/') + 1).replace("%20", " "))
        .containsExactlyInAnyOrder(
            "Record table",
            "Table with graph",
            "Lab report",
            "record-table.xltx",
            "table-with-graph.xltx",
            "full-report.xltx");
  }

  @Nested
  class AGraph {

    @ParameterizedTest
    @MethodSource("tenthmark.samples.template.TemplatesIT#withGraph")
    void drawsPointsWithBarsAndALineFromTheCells(Template template, Copy copy, String ending)
        throws Exception {
      Places places = template.plan().places();
      try (Workbook workbook = office.open(TemplatesTest.file(template, copy, ending))) {
        DrawnGraph graph = DrawnGraph.on("Points", workbook);
        assertThat(graph.chartType()).isEqualTo("com.sun.star.chart2.ScatterChartType");
        assertThat(graph.seriesCount()).isEqualTo(2);
        assertThat(graph.ranges(0))
            .containsExactlyInAnyOrderEntriesOf(
                Map.of(
                    "values-x", cells(places, "points.travel"),
                    "values-y", cells(places, "points.force"),
                    "error-bars-x-positive", cells(places, "points.ux"),
                    "error-bars-x-negative", cells(places, "points.ux"),
                    "error-bars-y-positive", cells(places, "points.uy"),
                    "error-bars-y-negative", cells(places, "points.uy")));
        assertThat(graph.ranges(1))
            .containsExactlyInAnyOrderEntriesOf(
                Map.of(
                    "values-x", cells(places, "fitted.travel"),
                    "values-y", cells(places, "fitted.force")));
        assertThat(graph.xTitle()).isEqualTo("Travel (mm)");
        assertThat(graph.yTitle()).isEqualTo("Force (N)");
      }
    }

    static Stream<Arguments> filledIn() {
      return withGraph().filter(arguments -> arguments.get()[1] == Copy.COMPLETED);
    }

    @ParameterizedTest
    @MethodSource("filledIn")
    void followsANumberThatIsTyped(Template template, Copy copy, String ending) throws Exception {
      Places places = template.plan().places();
      try (Workbook workbook = office.open(TemplatesTest.file(template, copy, ending))) {
        DrawnGraph graph = DrawnGraph.on("Points", workbook);
        double bar = graph.numbers(0, "error-bars-y-positive")[0];
        double end = graph.numbers(1, "values-y")[0];
        workbook.set("Points." + places.address("point1.force"), 12);
        assertThat(graph.numbers(0, "values-y")[0]).isEqualTo(12);
        // 1 % of one newton more
        assertThat(graph.numbers(0, "error-bars-y-positive")[0])
            .isCloseTo(bar + 0.01, within(1e-9));
        assertThat(graph.numbers(1, "values-y")[0]).isGreaterThan(end);
      }
    }

    private static String cells(Places places, String key) {
      return "$" + places.sheet(key) + "." + Places.fixed(places.address(key));
    }
  }

  @Nested
  class FilledIn {

    @ParameterizedTest
    @MethodSource("tenthmark.samples.template.TemplatesIT#blanks")
    void givesTheResultsOfTheFilledInCopyAndTheCheckerNothingToFind(
        Template template, Copy copy, String ending, @TempDir Path folder) throws Exception {
      try (Workbook typed = office.open(TemplatesTest.file(template, copy, ending));
          Workbook example = office.open(TemplatesTest.file(template, Copy.COMPLETED, ".ods"))) {
        type(template, typed, folder);
        for (String sheet : typed.document().getSheets().getElementNames()) {
          assertThat(typed.values(sheet + ".A1:U40"))
              .as(sheet)
              .isDeepEqualTo(example.values(sheet + ".A1:U40"));
        }
        if (template.graph().isPresent()) {
          assertThat(DrawnGraph.on("Points", typed).numbers(1, "values-y"))
              .isEqualTo(DrawnGraph.on("Points", example).numbers(1, "values-y"))
              .doesNotContain(Double.NaN);
        }
        for (Format format : Format.values()) {
          Path saved = typed.save(template.file() + "-typed", format);
          assertThat(Saved.findings(FileChecker.load(), saved)).as(format.name()).isEmpty();
        }
      }
    }
  }

  /** Types what the example holds into the white cells. */
  private static void type(Template template, Workbook workbook, Path folder) throws Exception {
    Map<CellAddress, Object> blank = Saved.inputs(template.plan().written(Copy.START), folder);
    for (Map.Entry<CellAddress, Object> cell :
        Saved.inputs(template.plan().written(Copy.COMPLETED), folder).entrySet()) {
      if (!blank.containsKey(cell.getKey())) {
        if (cell.getValue() instanceof Content.Number number) {
          workbook.set(cell.getKey().toString(), number.value());
        } else {
          workbook.set(cell.getKey().toString(), ((Content.Text) cell.getValue()).text());
        }
      }
    }
  }
}
