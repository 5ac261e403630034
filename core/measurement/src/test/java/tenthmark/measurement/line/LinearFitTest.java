package tenthmark.measurement.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tenthmark.measurement.ReferenceData.assertDigits;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.ReferenceData;

class LinearFitTest {

  /** The last column of a file against those before it. */
  private static LinearFit fit(String file, boolean throughOrigin) {
    List<double[]> rows = ReferenceData.rows(file);
    return LinearFit.of(
        rows.stream().mapToDouble(row -> row[row.length - 1]).toArray(),
        rows.stream().map(row -> Arrays.copyOf(row, row.length - 1)).toArray(double[][]::new),
        throughOrigin);
  }

  @Nested
  class PublishedCases {

    // NIST StRD, linear regression, Longley (higher difficulty)
    @Test
    void longley() {
      LinearFit fit = fit("nist-strd/longley.csv", false);

      assertDigits(fit.intercept(), "-3482258.63459582", 11);
      assertDigits(fit.coefficient(0), "15.0618722713733", 10);
      assertDigits(fit.coefficient(1), "-0.358191792925910E-01", 11);
      assertDigits(fit.coefficient(2), "-2.02022980381683", 11);
      assertDigits(fit.coefficient(3), "-1.03322686717359", 11);
      assertDigits(fit.coefficient(4), "-0.511041056535807E-01", 11);
      assertDigits(fit.coefficient(5), "1829.15146461355", 11);
      assertDigits(fit.interceptUncertainty(), "890420.383607373", 11);
      assertDigits(fit.uncertainty(0), "84.9149257747669", 11);
      assertDigits(fit.uncertainty(1), "0.334910077722432E-01", 11);
      assertDigits(fit.uncertainty(2), "0.488399681651699", 11);
      assertDigits(fit.uncertainty(3), "0.214274163161675", 11);
      assertDigits(fit.uncertainty(4), "0.226073200069370", 11);
      assertDigits(fit.uncertainty(5), "455.478499142212", 11);
      assertDigits(fit.residualDeviation(), "304.854073561965", 12);
      assertDigits(fit.determination(), "0.995479004577296", 13);
      assertDigits(fit.residualSquares(), "836424.055505915", 12);
      assertDigits(fit.f(), "330.285339234588", 12);
      assertThat(fit.freedom()).isEqualTo(9);
    }

    // NIST StRD, linear regression, Norris (lower difficulty)
    @Test
    void norris() {
      LinearFit fit = fit("nist-strd/norris.csv", false);

      assertDigits(fit.coefficient(0), "1.00211681802045", 13);
      assertDigits(fit.intercept(), "-0.262323073774029", 12);
      assertDigits(fit.uncertainty(0), "0.000429796848199937", 12);
      assertDigits(fit.interceptUncertainty(), "0.232818234301152", 12);
      assertDigits(fit.residualDeviation(), "0.884796396144373", 12);
      assertDigits(fit.f(), "5436385.54079785", 12);
    }

    // NIST StRD, linear regression, NoInt1 and NoInt2 (average difficulty)
    @Test
    void throughTheOrigin() {
      LinearFit first = fit("nist-strd/noint1.csv", true);
      LinearFit second = fit("nist-strd/noint2.csv", true);

      assertDigits(first.coefficient(0), "2.07438016528926", 13);
      assertDigits(first.uncertainty(0), "0.165289256198347E-01", 13);
      assertDigits(first.determination(), "0.999365492298663", 13);
      assertDigits(first.f(), "15750.2500000000", 12);
      assertDigits(second.coefficient(0), "0.727272727272727", 13);
      assertDigits(second.uncertainty(0), "0.420827318078432E-01", 13);
      assertThat(second.intercept()).isZero();
    }
  }

  // y = 2 - 3 x + 0.5 x², by hand; the deviations 1, -3, 3, -1 of four of the points are upright to
  // 1, x and x²
  @Test
  void parabola() {
    double[] x = {0, 1, 2, 3};
    double[] deviations = {1, -3, 3, -1};
    double[] y = new double[4];
    double[][] powers = new double[4][];
    for (int i = 0; i < 4; i++) {
      y[i] = 2 - 3 * x[i] + 0.5 * x[i] * x[i] + deviations[i];
      powers[i] = new double[] {x[i], x[i] * x[i]};
    }

    LinearFit fit = LinearFit.of(y, powers, false);

    assertDigits(fit.coefficient(0), "-3", 12);
    assertDigits(fit.coefficient(1), "0.5", 12);
    assertDigits(fit.intercept(), "2", 12);
    assertDigits(fit.residualSquares(), "20", 12);
    assertDigits(fit.at(4, 16), "-2", 12);
  }

  @Nested
  class NoFit {

    private void isSaidToBe(String key, double[] y, double[][] x) {
      assertThatThrownBy(() -> LinearFit.of(y, x, false))
          .isInstanceOfSatisfying(
              FitException.class, problem -> assertThat(problem.said().key()).isEqualTo(key));
    }

    @Test
    void isThereOfTooFewValues() {
      isSaidToBe("fit.few", new double[] {1, 2, 4}, new double[][] {{1, 2}, {2, 1}, {3, 5}});
    }

    @Test
    void isThereOfVariablesThatDependOnEachOther() {
      isSaidToBe(
          "fit.dependent",
          new double[] {1, 2, 4, 9, 3},
          new double[][] {{1, 2.1}, {2, 4.2}, {3, 6.3}, {5, 10.5}, {7, 14.7}});
    }

    @Test
    void isThereOfAVariableThatNeverChanges() {
      isSaidToBe(
          "fit.x.equal",
          new double[] {1, 2, 4, 5},
          new double[][] {{1, 7}, {2, 7}, {3, 7}, {5, 7}});
    }
  }
}
