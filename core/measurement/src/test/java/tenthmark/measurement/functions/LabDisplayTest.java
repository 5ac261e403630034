package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabDisplayTest {

  @Nested
  class Specification {

    // common practice, no source: one count of the last digit unless the maker says more
    @Test
    void isOneCountWhenNothingElseIsGiven() {
      assertThat(number("LAB_DISPLAY", 0.1)).isEqualTo(0.1);
      assertThat(number("LAB_DISPLAY", 0.1, null, null, 0.5)).isEqualTo(0.05);
    }

    // common practice, no source: percent of the reading plus counts, added straight
    @ParameterizedTest
    @CsvSource({
      "0.1, 412.6, 0.5, 2, 2.263",
      "0.01, -12.34, 0.8, 3, 0.12872",
      "1, 0, 5, 0, 0",
    })
    void addsPercentAndCounts(
        double resolution, double reading, double percent, double counts, double expected) {
      assertThat(number("LAB_DISPLAY", resolution, reading, percent, counts))
          .isCloseTo(expected, within(1e-14));
    }

    // JCGM 100:2008, 4.3.7 example 2 (from memory, recomputed): 14e-6 of the reading plus 2e-6 of
    // the 1 V range, half-width printed as 15 uV
    @Test
    void givesTheBoundOfAVoltmeter() {
      assertThat(number("LAB_DISPLAY", 1e-6, 0.928571, "0.0014 %", 2))
          .isCloseTo(15e-6, within(0.5e-6));
    }

    /** By hand: 0.05 % of 200 and 3 counts. */
    @ParameterizedTest
    @ValueSource(strings = {"0.05 %", "0,05%"})
    void takesASmallPercentageAsText(String percent) {
      assertThat(number("LAB_DISPLAY", 0.1, 200, percent, 3)).isCloseTo(0.4, within(1e-15));
    }

    // The same voltmeter as its maker states it: no counts, but percent of the range
    @Test
    void addsPercentOfTheRange() {
      assertThat(number("LAB_DISPLAY", 1e-6, 0.928571, "0.0014 %", 0, 1, "0.0002 %"))
          .isCloseTo(15e-6, within(0.5e-6));
      assertThat(number("LAB_DISPLAY", 0.1, null, null, 0, 200, 0.5)).isEqualTo(1);
      assertThat(number("LAB_DISPLAY", 0.1, 412.6, 0.5, 2, 1000))
          .as("a range alone adds nothing")
          .isEqualTo(number("LAB_DISPLAY", 0.1, 412.6, 0.5, 2));
    }

    @Test
    void keepsAVeryLargeReading() {
      assertThat(number("LAB_DISPLAY", 1, 1e308, 50)).isEqualTo(5e307);
    }
  }

  @Nested
  class BadArguments {

    @Test
    void includeAPercentageWithoutReading() {
      assertThat(fault("LAB_DISPLAY", 0.1, null, 0.5))
          .isEqualTo(
              "LAB_DISPLAY: reading is blank; with a percentage it must be the number that the"
                  + " display shows.");
    }

    /** 1%, 2% and 5% as a formula computes them: never a hundredth of what was meant. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.02, 0.05, 0.0999})
    void includeAPercentageThatMayBeAFraction(double percent) {
      assertThat(fault("LAB_DISPLAY", 0.1, 412.6, percent, 2))
          .endsWith(
              "; it must be 0 or a number of percent from 0.1 on, such as 1 for 1 %, or a text such"
                  + " as \"0.05 %\" (1% without quotation marks is 0.01).");
    }

    @Test
    void includeAPercentageOfNoRange() {
      assertThat(fault("LAB_DISPLAY", 0.1, 5, 1, 1, null, 0.5))
          .isEqualTo(
              "LAB_DISPLAY: range is blank; with rangepercent it must be the range that the display"
                  + " is set to.");
      assertThat(fault("LAB_DISPLAY", 0.1, 5, 1, 1, -10, 0.5)).contains("range is -10");
    }

    @Test
    void nameTheArgument() {
      assertThat(fault("LAB_DISPLAY", 0))
          .isEqualTo("LAB_DISPLAY: resolution is 0; it must be a number greater than zero.");
      assertThat(fault("LAB_DISPLAY", 0.1, 5, -1)).contains("percent is -1");
      assertThat(fault("LAB_DISPLAY", 0.1, 5, 1, -1)).contains("counts is -1");
      assertThat(fault("LAB_DISPLAY", 0.1, "5 V")).contains("reading is the text \"5 V\"");
      assertThat(fault("LAB_DISPLAY", 0.1, 5, 1, 1, 1, 1, 1))
          .contains("there are 7 arguments; at most 6 are taken");
    }

    @Test
    void includeAResultBeyondTheLargestNumber() {
      assertThat(fault("LAB_DISPLAY", 1, 1e308, 500)).contains("the result is too large");
    }
  }
}
