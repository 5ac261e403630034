package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.catalogue.Value;

class LabBudgetTest {

  @Nested
  class Rows {

    @Test
    void listEachContributionWithItsShareAndTheTotal() {
      assertThat(rows(foamGrip()))
          .containsExactly(
              row("reading", "millimetre marks, two ends", 0.5, 0.25),
              row("physical", "soft ends", 1.5, 0.75),
              row("total", null, 2, 1));
    }

    // JCGM 100:2008, H.1 (from memory, recomputed): 25^2, 9.7^2, 2.9^2 and 16.6^2 nm^2 of 1002 nm^2
    @Test
    void shareTheSquareInQuadrature() {
      List<List<Value>> rows =
          rows(
              table(
                  row("instrument", "reference gauge", 25),
                  row("repeat", "comparison", 9.7),
                  row("physical", "expansion", 2.9),
                  row("physical", "temperature difference", 16.6)),
              "quadrature");
      assertThat(number(rows.get(0).get(3))).isCloseTo(625.0 / 1002, within(0.002));
      assertThat(number(rows.get(3).get(3))).isCloseTo(16.6 * 16.6 / 1002, within(0.002));
      assertThat(rows.subList(0, 4).stream().mapToDouble(r -> number(r.get(3))).sum())
          .isCloseTo(1, within(1e-12));
    }

    @Test
    void skipBlankOnesAndIgnoreTheCaseOfAKind() {
      assertThat(rows(table(row("Timing", "reaction", 0.2), row(null, null, null))))
          .containsExactly(row("timing", "reaction", 0.2, 1), row("total", null, 0.2, 1));
    }

    @Test
    void shareNothingIfTheTotalIsZero() {
      assertThat(rows(table(row("reading", "none", 0))))
          .containsExactly(row("reading", "none", 0, 0), row("total", null, 0, 0));
    }

    @Test
    void mayBeVeryLarge() {
      List<List<Value>> rows =
          rows(table(row("reading", "a", 3e300), row("repeat", "b", 4e300)), "quadrature");
      assertThat(number(rows.get(0).get(3))).isCloseTo(0.36, within(1e-15));
      assertThat(number(rows.get(2).get(2))).isEqualTo(5e300);
    }
  }

  @Nested
  class BadArguments {

    @Test
    void nameTheRow() {
      assertThat(sentence(table(row("reading", "a", 1), row("guess", "b", 1))))
          .isEqualTo(
              "LAB_BUDGET: table (row 2, column 1) is the text \"guess\"; it must be one of"
                  + " reading, physical, instrument, repeat, timing.");
      assertThat(sentence(table(row("reading", "a", -1))))
          .isEqualTo(
              "LAB_BUDGET: table (row 1, column 3) is -1; it must be a number, zero or greater.");
      assertThat(sentence(table(row("reading", "a", "1 mm"))))
          .contains("table (row 1, column 3) is the text \"1 mm\"");
      assertThat(sentence(table(row("reading", "a", null))))
          .contains("table (row 1, column 3) is blank");
      assertThat(sentence(table(row("reading", new Value.Fault("#REF!"), 1))))
          .contains("table (row 1, column 2) is the error #REF!");
    }

    @Test
    void includeAWrongShapeAndNothing() {
      assertThat(sentence(column("reading", "physical")))
          .isEqualTo(
              "LAB_BUDGET: table is a range of 2 by 1 cells; it must be a range of three columns"
                  + " (kind, due to, size) with at least one contribution.");
      assertThat(sentence(table(row(null, null, null)))).contains("table is blank in every row");
    }

    private String sentence(Value table) {
      return ((Value.Text) rows(table).get(0).get(0)).text();
    }
  }

  static Value foamGrip() {
    return table(
        row("reading", "millimetre marks, two ends", 0.5), row("physical", "soft ends", 1.5));
  }

  private static List<List<Value>> rows(Object... arguments) {
    return ((Value.Table) call("LAB_BUDGET", arguments)).rows();
  }

  private static double number(Value value) {
    return ((Value.Numeric) value).number();
  }
}
