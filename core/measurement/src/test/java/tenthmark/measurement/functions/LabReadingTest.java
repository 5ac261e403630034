package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabReadingTest {

  @Nested
  class Fractions {

    // common practice, no source: a tenth between wide marks, a quarter between fine ones, once for
    // each end
    @ParameterizedTest
    @CsvSource({"1, wide, 1, 0.1", "1, fine, 1, 0.25", "1, Fine, 2, 0.5", "10, wide, 2, 2"})
    void followThePracticeAtTheBench(double division, String spacing, int ends, double expected) {
      assertThat(number("LAB_READING", division, spacing, ends)).isCloseTo(expected, within(1e-15));
    }

    // common practice, no source: two readings of half a division make one division for a length
    @Test
    void canBeTheCoursesOwn() {
      assertThat(number("LAB_READING", 1, 0.5, 2)).isEqualTo(1);
    }

    @Test
    void areWideAndOneEndWhenLeftOut() {
      assertThat(number("LAB_READING", 5)).isEqualTo(0.5);
      assertThat(number("LAB_READING", 5, null, 2)).isEqualTo(1);
    }
  }

  @Nested
  class BadArguments {

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, -1"})
    void nameTheDivision(double division, String shown) {
      assertThat(fault("LAB_READING", division))
          .isEqualTo(
              "LAB_READING: division is " + shown + "; it must be a number greater than zero.");
    }

    @Test
    void nameAnUnknownSpacing() {
      assertThat(fault("LAB_READING", 1, "narrow"))
          .isEqualTo(
              "LAB_READING: spacing is the text \"narrow\"; it must be wide, fine, or a fraction"
                  + " greater than 0 and at most 1.");
    }

    @Test
    void includeAnInfiniteDivisionAndAFractionAboveOne() {
      assertThat(fault("LAB_READING", Double.POSITIVE_INFINITY))
          .contains("division is not a finite number");
      assertThat(fault("LAB_READING", 1, 1.5)).contains("spacing is 1.5");
      assertThat(fault("LAB_READING", 1, 0)).contains("spacing is 0");
      assertThat(fault("LAB_READING", 1, "wide", 0)).contains("ends is 0");
      assertThat(fault("LAB_READING", 1.7e308, 1, 2)).contains("the result is too large");
    }

    @Test
    void includeABlankDivisionAndAText() {
      assertThat(fault("LAB_READING", new Object[] {null})).contains("division is blank");
      assertThat(fault("LAB_READING", "1 mm")).contains("division is the text \"1 mm\"");
    }
  }
}
