package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Labels.labelled;
import static tenthmark.measurement.functions.Labels.sentence;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LabWeightedTest {

  // J. R. Taylor, An Introduction to Error Analysis, 7.2: 11 ± 1, 12 ± 1, 10 ± 3 ohm give 11.42
  // ± 0.69, stated as 11.4 ± 0.7; from memory. By hand: weights 1, 1, 1/9, so mean
  // (23 + 10/9)/(19/9) = 217/19, uncertainty sqrt(9/19)
  @Test
  void agreesWithTheTextbook() {
    Map<String, Double> result =
        labelled(call("LAB_WEIGHTED", column(11, 12, 10), column(1, 1, 3)));
    assertThat(result)
        .containsOnlyKeys(
            "weighted mean", "uncertainty", "chi-squared", "degrees of freedom", "scatter ratio");
    assertThat(result.get("weighted mean")).isCloseTo(217 / 19.0, within(1e-14));
    assertThat(result.get("uncertainty")).isCloseTo(Math.sqrt(9 / 19.0), within(1e-15));
    double chiSquared = (64 + 121 + 27 * 27 / 9.0) / (19 * 19);
    assertThat(result.get("chi-squared")).isCloseTo(chiSquared, within(1e-13));
    assertThat(result.get("degrees of freedom")).isEqualTo(2);
    assertThat(result.get("scatter ratio")).isCloseTo(Math.sqrt(chiSquared / 2), within(1e-13));
  }

  @Nested
  class Laws {

    @Test
    void equalUncertaintiesGiveTheMean() {
      Random random = new Random(5);
      for (int i = 0; i < 50; i++) {
        int n = 2 + random.nextInt(30);
        double[] values = random.doubles(n).toArray();
        double[] equal = new double[n];
        Arrays.fill(equal, random.nextDouble());
        Map<String, Double> result = weighted(values, equal);
        assertThat(result.get("weighted mean"))
            .isCloseTo(Arrays.stream(values).average().orElseThrow(), within(1e-14));
      }
    }

    @Test
    void unitAndZeroDoNotMatter() {
      Random random = new Random(6);
      for (int i = 0; i < 100; i++) {
        int n = 2 + random.nextInt(10);
        double[] values = random.doubles(n).toArray();
        double[] uncertainties = random.doubles(n, 0.01, 1).toArray();
        double unit = Math.scalb(1.0, random.nextInt(1600) - 800);
        Map<String, Double> plain = weighted(values, uncertainties);
        Map<String, Double> scaled = weighted(times(values, unit), times(uncertainties, unit));
        assertThat(scaled.get("weighted mean")).isEqualTo(plain.get("weighted mean") * unit);
        assertThat(scaled.get("uncertainty")).isEqualTo(plain.get("uncertainty") * unit);
        assertThat(scaled.get("chi-squared")).isEqualTo(plain.get("chi-squared"));
      }
    }

    @Test
    void smallUncertaintiesOnALargeValueKeepTheirDigits() {
      Map<String, Double> result =
          weighted(new double[] {1e9 + 0.25, 1e9 + 0.5}, new double[] {0.125, 0.125});
      assertThat(result.get("weighted mean")).isEqualTo(1e9 + 0.375);
      assertThat(result.get("chi-squared")).isEqualTo(2);
    }

    @Test
    void aValueKnownFarBetterDecidesAlone() {
      Map<String, Double> result =
          weighted(new double[] {3, 700, -2e9}, new double[] {1e-200, 1, 1e200});
      assertThat(result.get("weighted mean")).isEqualTo(3);
      assertThat(result.get("uncertainty")).isEqualTo(1e-200);
    }
  }

  @Nested
  class Cells {

    @Test
    void blankOnesAreSkippedInPairs() {
      assertThat(call("LAB_WEIGHTED", column(11, null, 7, 12), column(1, 5, null, 1)))
          .isEqualTo(call("LAB_WEIGHTED", column(11, 12), column(1, 1)));
    }

    @Test
    void thatCannotBeUsedAreNamed() {
      assertThat(sentence(call("LAB_WEIGHTED", column(11, 12), column(1, 1, 3))))
          .isEqualTo(
              "LAB_WEIGHTED: uncertainties has 3 cells and values has 2 cells; they must have"
                  + " equally many.");
      assertThat(sentence(call("LAB_WEIGHTED", column(11, 12), column(1, 0))))
          .isEqualTo(
              "LAB_WEIGHTED: uncertainties (row 2) is 0; it must be a number greater than zero.");
      assertThat(sentence(call("LAB_WEIGHTED", column(11), column(1))))
          .isEqualTo(
              "LAB_WEIGHTED: values, uncertainties have 1 row without a blank cell; a weighted mean"
                  + " needs at least 2.");
      assertThat(sentence(call("LAB_WEIGHTED", column(1e308, -1e308), column(1, 1))))
          .contains("too large");
    }
  }

  private static Map<String, Double> weighted(double[] values, double[] uncertainties) {
    return labelled(call("LAB_WEIGHTED", Labels.column(values), Labels.column(uncertainties)));
  }

  private static double[] times(double[] numbers, double factor) {
    return Arrays.stream(numbers).map(number -> number * factor).toArray();
  }
}
