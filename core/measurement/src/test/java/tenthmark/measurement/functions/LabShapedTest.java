package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabShapedTest {

  @Nested
  class PublishedBounds {

    // JCGM 100:2008 (all from memory, recomputed from the inputs): 4.3.7 examples 1 and 2; F.2.2.1
    // for a resolution of 1; H.1.3.4 cyclic temperature. EURACHEM/CITAC CG 4 (2000), A1: flask of
    // 100 mL. The last column is half a unit of the printed last digit.
    @ParameterizedTest
    @CsvSource({
      "4.3.7 ex. 1, 0.40e-6, rectangular, 0.23e-6, 0.005e-6",
      "4.3.7 ex. 2, 15e-6, rectangular, 8.7e-6, 0.05e-6",
      "F.2.2.1, 0.5, rectangular, 0.29, 0.005",
      "H.1 cyclic, 0.5, arcsine, 0.35, 0.005",
      "H.1 expansion, 1e-6, rectangular, 0.58e-6, 0.005e-6",
      "A1 flask, 0.1, triangular, 0.04, 0.005",
      "A1 temperature, 0.084, rectangular, 0.05, 0.005",
      "A1 purity, 0.0001, rectangular, 0.000058, 0.0000005",
    })
    void giveThePrintedUncertainty(
        String clause, double halfwidth, String shape, double printed, double tolerance) {
      assertThat(number("LAB_SHAPED", halfwidth, shape)).isCloseTo(printed, within(tolerance));
    }

    // Bounds of certificates: JCGM 100:2008, 4.3.3 example (240 µg at three standard deviations),
    // and
    // 4.3.4 example (129 µohm at 99 %, divided by 2.58 there); EA-4/02, S2 (45 mg with k = 2); all
    // from memory
    @ParameterizedTest
    @CsvSource({
      "4.3.3 mass, 240, 3, 80, 1e-12",
      "4.3.4 resistor, 129, 99, 50, 0.5",
      "S2 weight, 45, 2, 22.5, 1e-12"
    })
    void giveThePrintedUncertaintyOfACertificate(
        String clause, double halfwidth, double cover, double printed, double tolerance) {
      assertThat(number("LAB_SHAPED", halfwidth, "normal", cover))
          .isCloseTo(printed, within(tolerance));
    }

    // JCGM 100:2008, table G.2, last row: 1.00 for 68.27 %, 1.645 for 90 %, 3.00 for 99.73 %
    @ParameterizedTest
    @CsvSource({"68.27, 1.00, 0.005", "90, 1.645, 0.0005", "99.73, 3.00, 0.005"})
    void readALevelAsTheFactorOfTheNormalDistribution(
        double level, double factor, double tolerance) {
      assertThat(1 / number("LAB_SHAPED", 1, "normal", level)).isCloseTo(factor, within(tolerance));
    }

    // JCGM 100:2008, 4.3.4 (from memory): 1.96 for a 95 % interval of a normal distribution
    @Test
    void includeANormalIntervalOf95Percent() {
      assertThat(number("LAB_SHAPED", 1.96, "normal")).isEqualTo(1);
    }
  }

  @Test
  void isRectangularWhenLeftOutAndZeroForNoWidth() {
    assertThat(number("LAB_SHAPED", 3)).isCloseTo(Math.sqrt(3), within(1e-15));
    assertThat(number("LAB_SHAPED", 0, "normal")).isZero();
    assertThat(number("LAB_SHAPED", 1e300, "Triangular")).isCloseTo(4.08e299, within(1e297));
  }

  @Test
  void refusesACoverOfBoundsThatAreNotNormal() {
    assertThat(fault("LAB_SHAPED", 1, null, 2))
        .isEqualTo(
            "LAB_SHAPED: cover is given, but the shape is rectangular; only normal bounds have a"
                + " level or a coverage factor.");
    assertThat(fault("LAB_SHAPED", 1, "normal", 0)).contains("cover is 0");
    assertThat(fault("LAB_SHAPED", 1, "normal", 0.95)).contains("cover is 0.95");
    assertThat(number("LAB_SHAPED", 1, "normal", "95 %"))
        .isEqualTo(number("LAB_SHAPED", 1, "normal", 95));
  }

  @Test
  void refusesANegativeWidthAndAnUnknownShape() {
    assertThat(fault("LAB_SHAPED", -1))
        .isEqualTo("LAB_SHAPED: halfwidth is -1; it must be a number, zero or greater.");
    assertThat(fault("LAB_SHAPED", 1, "round"))
        .isEqualTo(
            "LAB_SHAPED: shape is the text \"round\"; it must be one of rectangular, triangular,"
                + " arcsine, normal.");
  }
}
