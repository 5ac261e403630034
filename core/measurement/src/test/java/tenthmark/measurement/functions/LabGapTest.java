package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.text;

import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** LAB_GAP and LAB_AGREE compare two results in the same way. */
class LabGapTest {

  @Nested
  class Gap {

    // straight: the intervals overlap up to 1, common practice, no source; quadrature: JCGM
    // 200:2012, 2.47
    @ParameterizedTest
    @CsvSource({
      "172.5, 0.5, 170.5, 2, straight, 0.8",
      "1.1, 0.1, 0.9, 0.1, straight, 1",
      "10, 3, 20, 4, quadrature, 2",
      "10, 3, 20, 4, straight, 1.428571428571428571",
      "-5, 0, 5, 10, straight, 1",
      "7, 0, 7, 0, straight, 0",
      "1e308, 1e307, -1e308, 1e307, straight, 10",
      "1e308, 1e308, -1e308, 1e308, quadrature, 1.4142135623730951",
      "5e-324, 5e-324, 0, 0, quadrature, 1",
      "1e300, 1e-300, 1e300, 0, straight, 0",
    })
    void isTheDifferenceOverTheAllowedOne(
        double v1, double u1, double v2, double u2, String combine, double expected) {
      assertThat(number("LAB_GAP", v1, u1, v2, u2, combine)).isEqualTo(expected);
    }

    @Test
    void isSymmetricAndFreeOfUnits() {
      Random random = new Random(247);
      for (int i = 0; i < 500; i++) {
        double v1 = random.nextGaussian();
        double v2 = random.nextGaussian();
        double u1 = random.nextDouble();
        double u2 = random.nextDouble();
        for (String combine : new String[] {"straight", "quadrature"}) {
          double gap = number("LAB_GAP", v1, u1, v2, u2, combine);
          assertThat(number("LAB_GAP", v2, u2, v1, u1, combine)).isEqualTo(gap);
          assertThat(number("LAB_GAP", 1000 * v1, 1000 * u1, 1000 * v2, 1000 * u2, combine))
              .isCloseTo(gap, within(1e-11 * (1 + gap)));
        }
      }
    }
  }

  @Nested
  class Sentence {

    @Test
    void saysWhetherTheResultsAgree() {
      assertThat(text("LAB_AGREE", 172.5, 0.5, 170.5, 2))
          .isEqualTo(
              "Agree: the values differ by 2, which is 0.8 of the 2.5 that their uncertainties"
                  + " allow.");
      assertThat(text("LAB_AGREE", 10, 3, 20, 4, "quadrature"))
          .isEqualTo(
              "Disagree: the values differ by 10, which is 2 times the 5 that their uncertainties"
                  + " allow.");
      assertThat(text("LAB_AGREE", 7, 0, 7, 0)).isEqualTo("Agree: the values are equal.");
    }

    @Test
    void countsTouchingIntervalsAsAgreement() {
      assertThat(text("LAB_AGREE", 1.1, 0.1, 0.9, 0.1))
          .startsWith("Agree: the values differ by 0.2");
      assertThat(text("LAB_AGREE", 1.11, 0.1, 0.9, 0.1)).startsWith("Disagree: ");
    }

    @Test
    void countsTouchingIntervalsThatWereCalculatedToo() {
      assertThat(text("LAB_AGREE", 0.1 + 0.2, 0.05, 0.7 - 0.5, 0.05)).startsWith("Agree: ");
      assertThat(text("LAB_AGREE", 100.3 - 100.1, 0.1 * 3, 0.8, 0.3)).startsWith("Agree: ");
      assertThat(number("LAB_GAP", 100.3 - 100.1, 0.1 * 3, 0.8, 0.3)).isEqualTo(1);
    }

    @Test
    void agreesWithTheGap() {
      Random random = new Random(248);
      for (int i = 0; i < 500; i++) {
        double v1 = Math.rint(random.nextGaussian() * 20) / 10;
        double v2 = Math.rint(random.nextGaussian() * 20) / 10;
        double u = (1 + random.nextInt(20)) / 10.0;
        assertThat(text("LAB_AGREE", v1, u, v2, u).startsWith("Agree"))
            .isEqualTo(number("LAB_GAP", v1, u, v2, u) <= 1);
      }
    }
  }

  @Nested
  class BadArguments {

    @Test
    void includeDifferentValuesWithoutUncertainty() {
      String sentence =
          "u1 and u2 are both 0 although the values differ; at least one must be greater than zero.";
      assertThat(fault("LAB_GAP", 1, 0, 2, 0)).isEqualTo("LAB_GAP: " + sentence);
      assertThat(text("LAB_AGREE", 1, 0, 2, 0)).isEqualTo("LAB_AGREE: " + sentence);
    }

    @Test
    void nameTheArgument() {
      assertThat(fault("LAB_GAP", 1, -1, 2, 0)).contains("u1 is -1");
      assertThat(fault("LAB_GAP", 1, 1, null, 0)).contains("v2 is blank");
      assertThat(text("LAB_AGREE", 1, 1, 2, "0.1 mm")).contains("u2 is the text \"0.1 mm\"");
      assertThat(fault("LAB_GAP", 1, 1, 2, 1, "overlap")).contains("one of straight, quadrature");
    }

    @Test
    void includeAGapBeyondTheLargestNumber() {
      assertThat(fault("LAB_GAP", 1e300, 1e-300, 0, 0)).contains("the result is too large");
    }
  }
}
