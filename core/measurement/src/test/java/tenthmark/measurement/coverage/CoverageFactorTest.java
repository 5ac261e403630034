package tenthmark.measurement.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoverageFactorTest {

  // NIST TN 1297 (1994), table B.1; the same quantity as JCGM 100:2008, table G.2. The columns
  // 68.27, 95.45 and 99.73 stand for one, two and three normal standard deviations. One printed
  // value, 35 and 90 %, is 0.01 too high (exact 1.690): hence its tolerance.
  @ParameterizedTest
  @CsvFileSource(resources = "/reference/tables/student-t-table-b1-g2.csv", numLinesToSkip = 1)
  void agreesWithThePrintedTable(
      String freedom, String p68, double p90, double p95, String p9545, double p99, String p9973) {
    double nu = freedom.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(freedom);
    assertPrinted(p68, CoverageFactor.of(nu, normalWithin(1)));
    assertThat(CoverageFactor.of(nu, 0.90)).isCloseTo(p90, within(nu == 35 ? 0.011 : 0.0051));
    assertThat(CoverageFactor.of(nu, 0.95)).isCloseTo(p95, within(0.0051));
    assertPrinted(p9545, CoverageFactor.of(nu, normalWithin(2)));
    assertThat(CoverageFactor.of(nu, 0.99)).isCloseTo(p99, within(0.0051));
    assertPrinted(p9973, CoverageFactor.of(nu, normalWithin(3)));
  }

  private static void assertPrinted(String printed, double computed) {
    int decimals = printed.length() - printed.indexOf('.') - 1;
    assertThat(computed)
        .isCloseTo(Double.parseDouble(printed), within(0.501 * Math.pow(10, -decimals)));
  }

  private static double normalWithin(double deviations) {
    return 1 - 2 * new NormalDistribution().cumulativeProbability(-deviations);
  }

  // Closed forms of Student's distribution: tan(pi level/2) for one degree of freedom,
  // level sqrt(2/(1-level²)) for two
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.5, 0.6827, 0.95, 0.999, 0.999999})
  void agreesWithTheClosedForms(double level) {
    assertRelative(CoverageFactor.of(1, level), Math.tan(Math.PI * level / 2), 1e-9);
    assertRelative(
        CoverageFactor.of(2, level), level * Math.sqrt(2 / ((1 - level) * (1 + level))), 1e-12);
  }

  // 1.959963984540054: the normal quantile at 0.975, in any table of many digits (from memory)
  @ParameterizedTest
  @CsvSource({"Infinity, 0", "1e300, 1e-15", "1e12, 1e-11"})
  void tendsToTheNormalQuantile(double freedom, double tolerance) {
    assertThat(CoverageFactor.of(freedom, 0.95))
        .isCloseTo(1.959963984540054, within(tolerance + 1e-14));
  }

  @Test
  void doesNotJumpWhereTheExpansionTakesOver() {
    for (double level : new double[] {0.5, 0.95, 0.9973, 0.9999999}) {
      double below = CoverageFactor.of(Math.nextDown(1e5), level);
      assertRelative(CoverageFactor.of(1e5, level), below, 1e-11);
    }
  }

  @Test
  void fallsWithTheFreedomAndGrowsWithTheLevel() {
    Random random = new Random(4);
    for (int i = 0; i < 200; i++) {
      double freedom = 1 + 40 * random.nextDouble();
      double level = 0.99 * random.nextDouble();
      double factor = CoverageFactor.of(freedom, level);
      assertThat(CoverageFactor.of(freedom * 1.1, level)).isLessThan(factor);
      assertThat(CoverageFactor.of(freedom, level + 0.005)).isGreaterThan(factor);
    }
  }

  private static void assertRelative(double actual, double expected, double tolerance) {
    assertThat(actual).isCloseTo(expected, within(tolerance * expected));
  }
}
