package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Labels.sentence;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.catalogue.Value;

class LabStraysTest {

  @Nested
  class WorkedExamples {

    // NIST/SEMATECH e-Handbook 1.3.5.17.1 (mass spectrometer, U isotope): printed G = 2.4687 for
    // 245.57
    // (cut, not rounded: 2.46876); from memory
    @Test
    void grubbsFindsTheStrayOfTheHandbook() {
      Value.Table table =
          strays("grubbs", 199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57);
      assertThat(score(table, 7)).isCloseTo(2.4687, within(1e-4));
      assertThat(words(table)).containsExactly("ok", "ok", "ok", "ok", "ok", "ok", "ok", "suspect");
    }

    // J. R. Taylor, An Introduction to Error Analysis, 6.1: pendulum times, mean 3.4, s 0.8, the
    // 1.8 lies 2 s out and is rejected; from memory
    @Test
    void chauvenetFindsTheStrayOfTheTextbook() {
      Value.Table table = strays("chauvenet", 3.8, 3.5, 3.9, 3.9, 3.4, 1.8);
      assertThat(score(table, 5)).isCloseTo(2.0, within(0.05));
      assertThat(words(table)).containsExactly("ok", "ok", "ok", "ok", "ok", "suspect");
    }
  }

  @Nested
  class LimitAndSide {

    private static final Value TIMES = column(3.8, 3.5, 3.9, 3.9, 3.4, 1.8);

    // By hand: the last one lies 1.9705 out. Grubbs' table in StrayTestTest has for 6 values 1.887
    // (two-sided 5 %), 1.973 (1 %)
    @Test
    void areThoseThatAreGiven() {
      assertThat(found("grubbs", "5 %")).contains("suspect");
      assertThat(found("grubbs", "1%")).doesNotContain("suspect");
      assertThat(found("grubbs", 1.9)).contains("suspect");
      assertThat(found("grubbs", 2.1)).doesNotContain("suspect");
      assertThat(found("chauvenet", 2.1)).doesNotContain("suspect");
      assertThat(found("grubbs", "5 %")).isEqualTo(found("grubbs", null));
    }

    @Test
    void areOneSidedWhereAskedFor() {
      assertThat(found(null, null, "low")).contains("suspect").isEqualTo(found(null, null, "BOTH"));
      assertThat(found(null, null, "high")).doesNotContain("suspect");
    }

    @Test
    void areRefusedByName() {
      assertThat(sentence(call("LAB_STRAYS", TIMES, null, 0.05)))
          .isEqualTo(
              "LAB_STRAYS: limit is 0.05; it must be a score from 1 on, or a level from 0.1 % to 50 % as"
                  + " a text such as \"1 %\".");
      assertThat(sentence(call("LAB_STRAYS", TIMES, "chauvenet", "1 %")))
          .isEqualTo(
              "LAB_STRAYS: limit is a level in percent, which is for Grubbs; for chauvenet it must be a"
                  + " score.");
      assertThat(sentence(call("LAB_STRAYS", TIMES, null, null, "left")))
          .contains("side is the text \"left\"; it must be one of both, low, high.");
    }

    private static List<String> found(Object... how) {
      Object[] arguments = new Object[how.length + 1];
      arguments[0] = TIMES;
      System.arraycopy(how, 0, arguments, 1, how.length);
      return words((Value.Table) call("LAB_STRAYS", arguments));
    }
  }

  @Nested
  class Layout {

    @Test
    void keepsTheRowOfABlankCell() {
      Value.Table table = strays("grubbs", 5.0, null, 5.1, 5.2);
      assertThat(table.rows().get(1)).containsExactly(Value.BLANK, Value.BLANK);
      assertThat(score(table, 2)).isCloseTo(0, within(1e-12));
      assertThat(table.height()).isEqualTo(4);
    }

    @Test
    void testsByGrubbsWhenNothingIsSaid() {
      // 2.05 standard deviations among 8: above Chauvenet's limit, below Grubbs'
      Object[] values = {1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 13.0};
      assertThat(call("LAB_STRAYS", column(values))).isEqualTo(strays("grubbs", values));
      assertThat(words(strays("grubbs", values))).doesNotContain("suspect");
      assertThat(words(strays("chauvenet", values))).contains("suspect");
    }
  }

  @Nested
  class Laws {

    @Test
    void scoresDoNotDependOnUnitOrZero() {
      Random random = new Random(31);
      for (int i = 0; i < 100; i++) {
        Object[] values = random.doubles(3 + random.nextInt(20)).boxed().toArray();
        Object[] moved = new Object[values.length];
        double unit = Math.pow(10, random.nextInt(500) - 250);
        for (int j = 0; j < moved.length; j++) {
          moved[j] = unit * ((double) values[j] - 0.5);
        }
        Value.Table table = strays("grubbs", values);
        Value.Table other = strays("grubbs", moved);
        for (int j = 0; j < moved.length; j++) {
          assertThat(score(other, j)).isCloseTo(score(table, j), within(1e-11));
        }
      }
    }

    // The squares of the scores add up to n - 1, from the definition of s
    @Test
    void squaredScoresAddUp() {
      Random random = new Random(32);
      for (int n = 3; n < 60; n++) {
        Value.Table table = strays("chauvenet", random.doubles(n).boxed().toArray());
        double sum = 0;
        for (int j = 0; j < n; j++) {
          sum += Math.pow(score(table, j), 2);
        }
        assertThat(sum).isCloseTo(n - 1, within(1e-10));
      }
    }

    @Test
    void equalValuesHaveScoreZero() {
      assertThat(words(strays("grubbs", 2.5, 2.5, 2.5))).containsOnly("ok");
    }
  }

  @Test
  void mayLieTooFarApartToSubtract() {
    Value.Table table = strays("grubbs", 1.7e308, -1.7e308, 0.0);
    assertThat(score(table, 0)).isEqualTo(1);
    assertThat(score(table, 1)).isEqualTo(1);
    assertThat(score(table, 2)).isZero();
  }

  @Nested
  class BadArguments {

    @Test
    void areTooFewValues() {
      assertThat(sentence(strays("grubbs", 1.0, null, 2.0)))
          .isEqualTo(
              "LAB_STRAYS: values have 2 rows without a blank cell; a test for strays needs at"
                  + " least 3.");
    }

    @Test
    void areTextsByTheirPlace() {
      assertThat(sentence(strays("grubbs", 1.0, 2.0, "3 mm")))
          .isEqualTo("LAB_STRAYS: values (row 3) is the text \"3 mm\"; it must be a number.");
      assertThat(sentence(strays("dixon", 1.0, 2.0, 3.0)))
          .contains("test is the text \"dixon\"; it must be one of grubbs, chauvenet.");
    }
  }

  private static Value.Table strays(String test, Object... values) {
    return (Value.Table) call("LAB_STRAYS", column(values), test);
  }

  private static double score(Value.Table table, int row) {
    return ((Value.Numeric) table.rows().get(row).get(0)).number();
  }

  private static List<String> words(Value.Table table) {
    return table.rows().stream().map(row -> ((Value.Text) row.get(1)).text()).toList();
  }
}
