package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;
import static tenthmark.measurement.functions.Labels.labelled;
import static tenthmark.measurement.functions.Labels.sentence;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.ReferenceData;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;

class LabCurveTest {

  private static final Value X = column(1, 2, 3, 4);
  private static final Value Y = column(2, 4, 5, 9);
  private static final Value LINE = table(row("a", 1), row("b", 1));

  @Nested
  class Table {

    // NIST StRD, nonlinear regression, Misra1a (lower difficulty)
    @Test
    void agreesWithMisra1a() {
      List<double[]> rows = ReferenceData.rows("nist-strd/misra1a.csv");
      Value.Table curve =
          (Value.Table)
              call(
                  "LAB_CURVE",
                  "b1*(1-EXP(-b2*x))",
                  Labels.column(rows.stream().mapToDouble(row -> row[0]).toArray()),
                  Labels.column(rows.stream().mapToDouble(row -> row[1]).toArray()),
                  null,
                  table(row("b1", 500), row("b2", 1e-4)));
      assertNumber(curve, 0, 1, 238.94212918, 1e-8);
      assertNumber(curve, 0, 2, 2.7070075241, 1e-10);
      assertNumber(curve, 1, 1, 5.5015643181e-4, 1e-14);
      assertNumber(curve, 1, 2, 7.2668688436e-6, 1e-16);
      assertNumber(curve, 4, 1, 0.10187876330, 1e-11);
      assertThat(curve.rows().stream().map(row -> row.get(0)))
          .containsExactly(
              Value.of("b1"),
              Value.of("b2"),
              Value.of("chi-squared"),
              Value.of("degrees of freedom"),
              Value.of("residual standard deviation"));
      assertThat(curve.rows().get(2))
          .containsExactly(Value.of("chi-squared"), Value.of("needs uy"), Value.BLANK);
      assertThat(curve.rows().get(3).get(1)).isEqualTo(Value.of(12));
    }

    private static void assertNumber(
        Value.Table table, int row, int column, double expected, double tolerance) {
      assertThat(((Value.Numeric) table.rows().get(row).get(column)).number())
          .isCloseTo(expected, within(tolerance));
    }

    @Test
    void ofALineIsThatOfTheLine() {
      for (Object uy : new Object[] {null, 0.5, column(0.1, 0.2, 0.1, 0.4)}) {
        Map<String, Double> curve = labelled(call("LAB_CURVE", "a*x+b", X, Y, uy, LINE));
        Map<String, Double> line = labelled(call("LAB_LINE", X, Y, null, uy));
        assertThat(curve.get("a")).isCloseTo(line.get("slope"), within(1e-12));
        assertThat(curve.get("b")).isCloseTo(line.get("intercept"), within(1e-12));
        assertThat(curve.get("residual standard deviation"))
            .isCloseTo(line.get("residual standard deviation"), within(1e-12));
        assertThat(curve.containsKey("chi-squared")).isEqualTo(uy != null);
      }
    }
  }

  @Nested
  class Arguments {

    @Test
    void aRowWithABlankCellIsSkipped() {
      assertThat(
              call(
                  "LAB_CURVE",
                  "a*x+b",
                  column(1, 5, 2, 3, 4),
                  column(2, null, 4, 5, 9),
                  null,
                  table(row("a", 1), row(null, null), row("b", 1))))
          .isEqualTo(call("LAB_CURVE", "a*x+b", X, Y, null, LINE));
    }

    @Test
    void theUncertaintyKeepsItsPlaceBetweenTheSemicolons() {
      assertThat(Catalogue.load().find("LAB_CURVE").orElseThrow().declaration().signature())
          .isEqualTo("LAB_CURVE(model; x; y; [uy]; start)");
      assertThat(sentence(call("LAB_CURVE", "a*x", X, Y, table(row("a", 1), row("b", 1)))))
          .contains("start is blank; it must be a range of two columns");
    }

    @Test
    void thatMakeNoModelAreNamed() {
      assertThat(sentence(call("LAB_CURVE", "a*x+c", X, Y, null, LINE)))
          .isEqualTo("LAB_CURVE: the formula uses c, which is not among the names.");
      assertThat(sentence(call("LAB_CURVE", "a*x", X, Y, null, LINE)))
          .isEqualTo("LAB_CURVE: the model does not use b.");
      assertThat(sentence(call("LAB_CURVE", "a*x+(", X, Y, null, LINE))).startsWith("LAB_CURVE: ");
      assertThat(sentence(call("LAB_CURVE", "a*x+b", X, Y, null, table(row("a", "one")))))
          .contains("start (row 1, column 2) is the text \"one\"; it must be a number");
      assertThat(sentence(call("LAB_CURVE", "a*x", X, Y, null, table(row("a", 1), row("x", 1)))))
          .contains("the name x is given twice");
      assertThat(sentence(call("LAB_CURVE", "a*x+b", column(1, 2), column(1, 2), null, LINE)))
          .contains("x, y have 2 rows without a blank cell; the fit needs at least 3");
      assertThat(
              sentence(
                  call("LAB_CURVE", "a*LN(b*x)", X, Y, null, table(row("a", 1), row("b", -1)))))
          .contains("at the starting values: ");
    }
  }
}
