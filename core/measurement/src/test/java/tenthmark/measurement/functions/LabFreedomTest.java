package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.text;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LabFreedomTest {

  @Nested
  class WorkedExamples {

    // JCGM 100:2008, G.4.1 example: relative uncertainties 0.25 %, 0.57 %, 0.82 % from 10, 5 and 15
    // readings give 19.0; from memory
    @Test
    void ofTheFormula() {
      assertThat(freedom(column(0.25, 0.57, 0.82), column(9, 4, 14))).isCloseTo(19.0, within(0.05));
    }

    // JCGM 100:2008, H.1.6 and table H.1: 25.6 for the comparator and 16.7 for the length,
    // contributions
    // in nm unrounded; from memory
    @Test
    void ofTheEndGauge() {
      double repeatability = 13 / Math.sqrt(5);
      double random = 10 / 2.57;
      double systematic = 20 / 3.0;
      assertThat(freedom(column(repeatability, random, systematic), column(24, 5, 8)))
          .isCloseTo(25.6, within(0.05));
      double comparator = Math.hypot(repeatability, Math.hypot(random, systematic));
      double expansions = 50e6 * 0.1 * 1e-6 / Math.sqrt(3);
      double temperatures = 50e6 * 11.5e-6 * 0.05 / Math.sqrt(3);
      assertThat(freedom(column(25, comparator, expansions, temperatures), column(18, 25.6, 50, 2)))
          .isCloseTo(16.7, within(0.05));
    }
  }

  @Nested
  class Laws {

    @Test
    void liesBetweenTheSmallestAndTheSum() {
      Random random = new Random(8);
      for (int i = 0; i < 200; i++) {
        int n = 1 + random.nextInt(8);
        double[] sizes = random.doubles(n).toArray();
        double[] freedoms = random.doubles(n, 1, 60).toArray();
        double effective = freedom(Labels.column(sizes), Labels.column(freedoms));
        assertThat(effective)
            .isBetween(
                Arrays.stream(freedoms).min().orElseThrow() - 1e-9,
                Arrays.stream(freedoms).sum() + 1e-9);
      }
    }

    @Test
    void theUnitDoesNotMatter() {
      assertThat(freedom(column(3e-200, 4e-200), column(5, 6)))
          .isCloseTo(freedom(column(3e180, 4e180), column(5, 6)), within(1e-12));
    }
  }

  @Nested
  class BlankCells {

    @Test
    void asAFreedomAreInfinite() {
      assertThat(freedom(column(3, 4), column(9, null))).isCloseTo(625 / 9.0, within(1e-12));
      assertThat(freedom(column(3, 4), column(9, 1e300))).isCloseTo(625 / 9.0, within(1e-12));
    }

    @Test
    void inEveryFreedomGiveTheWordThatTheCoverageFactorTakes() {
      String word = text("LAB_FREEDOM", column(3, 4), column(null, null));
      assertThat(word).isEqualTo("infinite");
      assertThat(number("LAB_COVER", word)).isCloseTo(1.95996, within(1e-5));
    }

    @Test
    void asASizeSkipTheRow() {
      assertThat(freedom(column(3, null), column(9, 2))).isEqualTo(9);
    }
  }

  @Nested
  class BadArguments {

    @Test
    void areNamed() {
      assertThat(fault("LAB_FREEDOM", column(0, 0), column(4, 5)))
          .isEqualTo("LAB_FREEDOM: every size is 0; at least one must be greater than zero.");
      assertThat(fault("LAB_FREEDOM", column(1, 2), column(4, 0)))
          .isEqualTo(
              "LAB_FREEDOM: freedoms (row 2) is 0; it must be a number, 1 or greater, or blank for"
                  + " infinite.");
      assertThat(fault("LAB_FREEDOM", column(1, -2), column(4, 5)))
          .contains("sizes (row 2) is -2; it must be a number, zero or greater");
      assertThat(fault("LAB_FREEDOM", column(1, 2), column(4)))
          .contains("freedoms has 1 cell and sizes has 2 cells");
      assertThat(fault("LAB_FREEDOM", column((Object) null), column(4)))
          .contains("sizes, freedoms have 0 rows without a blank cell");
    }
  }

  private static double freedom(Object sizes, Object freedoms) {
    return number("LAB_FREEDOM", sizes, freedoms);
  }
}
