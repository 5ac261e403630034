package tenthmark.addin.graph;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** The command that draws a graph, of a wheel's turns and its way. Numbers invented. */
@ExtendWith(OfficeExtension.class)
class GraphIT {

  private Workbook workbook;

  @BeforeEach
  void fill(Workbook empty) throws Exception {
    workbook = empty;
    workbook.setAll(
        "A1:D5",
        new String[][] {
          {"turns n", "u(n)", "way s / m", "u(s) / m"},
          {"1", "0.1", "3.1", "0.2"},
          {"2", "0.1", "5.1", "0.2"},
          {"3", "0.1", "7.1", "0.2"},
          {"4", "0.1", "9.1", "0.2"}
        });
  }

  /** By hand: all points lie on s = 2 n + 1.1. */
  @Test
  void givesTheFittedLineAndTheResidualsAsFormulas() throws Exception {
    done("A1:D5");
    assertThat(workbook.shown("G1")).isEqualTo("Slope");
    assertThat(workbook.number("H1")).isCloseTo(2, within(1e-9));
    assertThat(workbook.number("H3")).isCloseTo(1.1, within(1e-9));
    assertThat(workbook.number("H6")).isCloseTo(3.1, within(1e-9));
    assertThat(workbook.number("H7")).isCloseTo(9.1, within(1e-9));
    assertThat(workbook.number("E4")).isCloseTo(0, within(1e-9));
    workbook.set("C4", 7.4);
    assertThat(workbook.number("E4")).isGreaterThan(0.1);
    assertThat(workbook.number("I7")).isGreaterThan(workbook.number("J7"));
  }

  @Test
  void namesTheAxesByTheHeadingsAndDrawsResidualsBelow() throws Exception {
    done("B3");
    assertThat(charts().getElementNames()).hasSize(2);
    assertThat(titles("Graph 1")).containsExactly("turns n", "way s / m");
    assertThat(titles("Graph 2")).containsExactly("turns n", "Residual");
  }

  @Test
  void isOneStepToUndo() throws Exception {
    List<String> before = List.of(workbook.undo().getAllUndoActionTitles());
    done("A1:D5");
    assertThat(workbook.undo().getAllUndoActionTitles())
        .containsExactlyElementsOf(
            Stream.concat(Stream.of("Draw Graph"), before.stream()).toList());
    workbook.undo().undo();
    assertThat(charts().getElementNames()).isEmpty();
    assertThat(workbook.shown("G1")).isEmpty();
    assertThat(workbook.shown("E2")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "n     | s      | A1:B5 | $A;$B",
        "t / s | s / m  | A1:C5 | $A;$B;;$C",
        "t / s | Δt / s | A1:C5 | $A;$C;$B",
        "1     | 2      | A1:D5 | $A;$C;$B;$D"
      })
  void tellsUncertaintiesByTheirHeadingsOrElseTheirOrder(
      String first, String second, String selected, String columns) throws Exception {
    workbook.set("A1", first).set("B1", second).set("C1", "u(s) / m").set("D1", "");
    char last = selected.charAt(3);
    for (char column = (char) (last + 1); column <= 'D'; column++) {
      workbook.setAll(column + "1:" + column + "5", new String[][] {{""}, {""}, {""}, {""}, {""}});
    }
    if (selected.startsWith("A1:C") && columns.endsWith("$B")) {
      workbook.set("C1", "s / m");
    }
    if (first.equals("1")) {
      workbook.set("C1", "3").set("D1", "4");
    }
    done(selected);
    String slope = String.valueOf((char) (last + 4)) + "1";
    String top = first.equals("1") ? "1" : "2";
    assertThat(workbook.formula(slope).replaceAll("\\$" + top + ":\\$.\\$5", ""))
        .isEqualTo("=TENTHMARK.LAB.SLOPE(" + columns + ")");
  }

  @Test
  void isRefusedWhereItsCellsAreNotFreeOrNoPointsAreThere() throws Exception {
    workbook.set("H2", "mine");
    assertThat(refused("A1:D5"))
        .startsWith("The fitted line and the residuals need the cells E1:J7");
    assertThat(refused("A1:A5")).startsWith("Select the points with their headings");
    assertThat(workbook.shown("E1")).isEmpty();
  }

  private void done(String selected) throws Exception {
    DispatchResultEvent result = workbook.select(selected).dispatch("tenthmark:graph");
    assertThat(result.State).as((String) result.Result).isEqualTo(DispatchResultState.SUCCESS);
  }

  private String refused(String selected) throws Exception {
    DispatchResultEvent result = workbook.select(selected).dispatch("tenthmark:graph");
    assertThat(result.State).isEqualTo(DispatchResultState.FAILURE);
    return (String) result.Result;
  }

  private XTableCharts charts() throws Exception {
    return queryInterface(
            XTableChartsSupplier.class,
            queryInterface(XSheetCellRange.class, workbook.range("A1")).getSpreadsheet())
        .getCharts();
  }

  private List<String> titles(String name) throws Exception {
    Object chart =
        queryInterface(XEmbeddedObjectSupplier.class, charts().getByName(name)).getEmbeddedObject();
    Object diagram = queryInterface(XChartDocument.class, chart).getDiagram();
    return List.of(
        title(queryInterface(XAxisXSupplier.class, diagram).getXAxisTitle()),
        title(queryInterface(XAxisYSupplier.class, diagram).getYAxisTitle()));
  }

  private static String title(Object shape) throws Exception {
    return (String) queryInterface(XPropertySet.class, shape).getPropertyValue("String");
  }
}
