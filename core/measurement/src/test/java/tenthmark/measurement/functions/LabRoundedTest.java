package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** LAB_ROUNDEDVALUE and LAB_ROUNDEDERROR round as LAB_RESULT does. */
class LabRoundedTest {

  @Nested
  class PublishedRounding {

    // ISO 80000-1:2009, Annex B (from memory): a value to a range, by the uncertainty's one digit;
    // tie rule A is the value's, tie rule B (greater magnitude) the uncertainty's
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/rounding/iso-80000-1.csv", numLinesToSkip = 1)
    void followsIso80000(
        String id, String source, double number, double range, String rule, double expected) {
      double rounded =
          rule.contains("greater magnitude")
              ? number("LAB_ROUNDEDERROR", 0, number, 3)
              : number("LAB_ROUNDEDVALUE", number, range, 1);
      assertThat(rounded).isEqualTo(expected);
    }

    // NIST SP 811, B.7.1, rules 1 and 3 (inputs confirmed, results from the stated rule)
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/rounding/nist-sp811.csv", numLinesToSkip = 1)
    void followsSp811(String id, String source, double number, int digits, double expected) {
      assertThat(number("LAB_ROUNDEDVALUE", number, Math.pow(10, 1 - digits), 1))
          .isEqualTo(expected);
    }

    // Review of Particle Physics, Introduction, 5.3, and its rule applied (confirmed in public
    // code comments)
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/rounding/pdg.csv", numLinesToSkip = 1)
    void followsTheParticleDataGroup(
        String id,
        String source,
        double value,
        double uncertainty,
        String rule,
        double roundedValue,
        double roundedUncertainty) {
      assertThat(number("LAB_ROUNDEDVALUE", value, uncertainty, "pdg")).isEqualTo(roundedValue);
      assertThat(number("LAB_ROUNDEDERROR", value, uncertainty, "pdg"))
          .isEqualTo(roundedUncertainty);
    }

    // JCGM 100:2008, 7.2.6 (from memory): 10.05762 ohm with 27 mohm is 10.058 ohm, 28.05 kHz is
    // 28 kHz. The guide also rounds 10.47 mohm up to 11: we round half up, to 10.
    @Test
    void followsTheGuide() {
      assertThat(number("LAB_ROUNDEDVALUE", 10.05762, 0.027, "standard")).isEqualTo(10.058);
      assertThat(number("LAB_ROUNDEDERROR", 0, 28.05, "standard")).isEqualTo(28);
      assertThat(number("LAB_ROUNDEDERROR", 0, 10.47, "standard")).isEqualTo(10);
    }

    // Harvey, Modern Analytical Chemistry (2000), ch. 4C: 0.0085 mL of 19.984 mL is reported as
    // 0.008, from 0.00849 before rounding
    @Test
    void roundsTheUnroundedPipet() {
      assertThat(number("LAB_ROUNDEDERROR", 19.984, 0.00849, 1)).isEqualTo(0.008);
      assertThat(number("LAB_ROUNDEDVALUE", 19.984, 0.00849, 1)).isEqualTo(19.984);
    }
  }

  @Nested
  class DigitsKept {

    // common practice, no source: the first digit before rounding decides
    @ParameterizedTest
    @CsvSource({
      "0.14, 0.14",
      "0.195, 0.20",
      "0.096, 0.1",
      "0.25, 0.3",
      "0.1, 0.1",
      "0.0996, 0.1",
      "1.96, 2",
      "199, 200",
      "0.149, 0.15",
      "5e-324, 5e-324",
      "1e300, 1e300",
    })
    void areOneOrTwoAtTheBench(double uncertainty, double expected) {
      assertThat(number("LAB_ROUNDEDERROR", 0, uncertainty)).isEqualTo(expected);
      assertThat(number("LAB_ROUNDEDERROR", 0, uncertainty, "Bench")).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
      "0.354, 0.35",
      "0.3549, 0.35",
      "0.355, 0.4",
      "0.949, 0.9",
      "0.9499, 0.9",
      "0.95, 1.0",
      "96.7, 100",
      "100, 100",
    })
    void dependOnThreeDigitsUnderPdg(double uncertainty, double expected) {
      assertThat(number("LAB_ROUNDEDERROR", 0, uncertainty, "pdg")).isEqualTo(expected);
    }

    @Test
    void areDecimal() {
      assertThat(number("LAB_ROUNDEDERROR", 0, 0.15, 1)).isEqualTo(0.2);
      assertThat(number("LAB_ROUNDEDERROR", 0, 2.675, 3)).isEqualTo(2.68);
      assertThat(number("LAB_ROUNDEDVALUE", 1.005, 0.01, 1)).isEqualTo(1);
      assertThat(number("LAB_ROUNDEDVALUE", 1.015, 0.01, 1)).isEqualTo(1.02);
    }

    @Test
    void leaveAnExactValueAlone() {
      assertThat(number("LAB_ROUNDEDVALUE", 1.23456789, 0)).isEqualTo(1.23456789);
      assertThat(number("LAB_ROUNDEDERROR", 1.23456789, 0)).isZero();
    }
  }

  @Nested
  class Laws {

    @Test
    void roundingMovesNeitherPartByMoreThanHalfAPlace() {
      Random random = new Random(726);
      for (int i = 0; i < 2000; i++) {
        double uncertainty = random.nextDouble() * Math.pow(10, random.nextInt(9) - 4);
        double value = random.nextGaussian() * 100 * uncertainty;
        int digits = 1 + random.nextInt(3);
        double roundedUncertainty = number("LAB_ROUNDEDERROR", value, uncertainty, digits);
        double roundedValue = number("LAB_ROUNDEDVALUE", value, uncertainty, digits);
        double place = Math.pow(10, 1 - digits) * uncertainty;
        assertThat(roundedUncertainty).isCloseTo(uncertainty, within(place / 2 * 1.000001));
        assertThat(roundedValue).isCloseTo(value, within(place / 2 * 10.00001));
        assertThat(number("LAB_ROUNDEDERROR", roundedValue, roundedUncertainty, digits))
            .isEqualTo(roundedUncertainty);
        assertThat(number("LAB_ROUNDEDVALUE", -value, uncertainty, digits))
            .isEqualTo(roundedValue == 0 ? 0 : -roundedValue);
      }
    }
  }

  @Nested
  class BadArguments {

    @Test
    void nameTheArgument() {
      assertThat(fault("LAB_ROUNDEDVALUE", 1, -1)).contains("uncertainty is -1");
      assertThat(fault("LAB_ROUNDEDERROR", null, 1)).contains("value is blank");
      assertThat(fault("LAB_ROUNDEDERROR", 1, 1, 16)).contains("digits is 16");
    }

    @Test
    void includeARoundedNumberBeyondTheLargest() {
      assertThat(fault("LAB_ROUNDEDERROR", 0, 1.75e308, 1)).contains("the result is too large");
    }
  }
}
