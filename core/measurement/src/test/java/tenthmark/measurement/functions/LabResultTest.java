package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.text;

import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabResultTest {

  @Nested
  class Styles {

    @ParameterizedTest
    @CsvSource({
      "plain, 12.34 ± 0.05 mm",
      "brief, 12.34(5) mm",
      "percent, 12.34 mm ± 0.4 %",
      "scientific, (1.234 ± 0.005)×10^1 mm",
    })
    void writeOneResultInFourWays(String style, String expected) {
      assertThat(text("LAB_RESULT", 12.3412, 0.0487, "mm", null, style)).isEqualTo(expected);
    }

    // JCGM 100:2008, 7.2.2 (from memory): 100.02147 g with 0.35 mg
    @Test
    void writeTheMassStandardAsTheGuideDoes() {
      assertThat(text("LAB_RESULT", 100.02147, 0.00035, "g", 2, "brief"))
          .isEqualTo("100.02147(35) g");
      assertThat(text("LAB_RESULT", 100.02147, 0.00035, "g", "standard"))
          .isEqualTo("100.02147 ± 0.00035 g");
    }

    // JCGM 100:2008, 7.2.4 (from memory): the same with U = 0.79 mg
    @Test
    void writeTheExpandedUncertaintyToo() {
      assertThat(text("LAB_RESULT", 100.02147, 0.00079, "g", 2)).isEqualTo("100.02147 ± 0.00079 g");
    }

    // JCGM 100:2008, 4.4.3 (from memory, recomputed): 100.145 C is printed as 100.14, a tie to even
    @Test
    void roundATieOfTheValueToEven() {
      assertThat(text("LAB_RESULT", 100.145, 0.333, "°C", 2)).isEqualTo("100.14 ± 0.33 °C");
    }

    // OpenStax, College Physics 1.3, example 1.2: 5 lb with 0.4 lb is 8 %; Physics: Principles with
    // Applications, 7th ed., ch. 11: 0.2 s in 5.5 s, 55 s and 5.5 min are 4, 0.4 and 0.06 %
    @ParameterizedTest
    @CsvSource({
      "5, 0.4, lb, 5.0 lb ± 8 %",
      "5.5, 0.2, s, 5.5 s ± 4 %",
      "55, 0.2, s, 55.0 s ± 0.4 %",
      "330, 0.2, s, 330.0 s ± 0.06 %",
    })
    void giveThePercentOfTheBooks(double value, double uncertainty, String unit, String expected) {
      assertThat(text("LAB_RESULT", value, uncertainty, unit, 1, "percent")).isEqualTo(expected);
    }

    /** By hand: what is printed says 3 of 1, while 2.6 of 1.4 would be read as 1.9 of 1. */
    @ParameterizedTest
    @CsvSource({
      "1.4, 2.6, 1 ± 300 %",
      "-1.4, 2.6, -1 ± 300 %",
      "0.6, 2.6, 1 ± 300 %",
      "1.5, 1.6, 1.5 ± 110 %"
    })
    void givePercentOfWhatIsPrintedWhereTheValueIsSmall(
        double value, double uncertainty, String expected) {
      assertThat(text("LAB_RESULT", value, uncertainty, null, null, "percent")).isEqualTo(expected);
    }

    @Test
    void giveAPercentageThatReadsBack() {
      Random random = new Random(7);
      for (int i = 0; i < 20_000; i++) {
        double value = (1 + random.nextInt(9_999)) / 100.0;
        double uncertainty = (1 + random.nextInt(9_999)) / 100.0;
        double printed = number("LAB_ROUNDEDERROR", value, uncertainty, 2);
        if (number("LAB_ROUNDEDVALUE", value, uncertainty, 2) != 0) {
          String text = text("LAB_RESULT", value, uncertainty, "mm", 2, "percent");
          // two digits of the percentage: off by at most 5 in 100, and the printed pair's own place
          assertThat(number("LAB_READBACK", text, "uncertainty"))
              .as(text)
              .isCloseTo(printed, withinPercentage(11));
        }
      }
    }

    /** Of calculated numbers, by hand in decimals. */
    @Test
    void roundATieThatACalculationBlurs() {
      assertThat(text("LAB_RESULT", 5.25, 0.7 * 0.35, null, 2)).isEqualTo("5.25 ± 0.25");
      assertThat(text("LAB_RESULT", 5.25, (0.7 - 0.4) / 2, null, 1)).isEqualTo("5.2 ± 0.2");
      assertThat(text("LAB_RESULT", 100.4 - 95.05, 0.1, null, 1)).isEqualTo("5.4 ± 0.1");
      assertThat(text("LAB_RESULT", 5.2, 0.7 - 0.5)).isEqualTo("5.2 ± 0.2");
    }

    // Harvey, Modern Analytical Chemistry (2000), example 4.6: 18 C with 1.2 C reported as 18 +/- 1
    // C
    @Test
    void keepOneDigitIfAsked() {
      assertThat(text("LAB_RESULT", 18, 1.2, "C", 1)).isEqualTo("18 ± 1 C");
      assertThat(text("LAB_RESULT", 18, 1.2, "C")).isEqualTo("18.0 ± 1.2 C");
      assertThat(text("LAB_RESULT", 18, 1.2, "C", null, "brief")).isEqualTo("18.0(1.2) C");
    }

    @Test
    void bracketAPercentSignThatIsTheUnit() {
      assertThat(text("LAB_RESULT", 12.3, 0.4, "%")).isEqualTo("(12.3 ± 0.4) %");
      assertThat(text("LAB_RESULT", 12.3, 0.4, "%", null, "percent")).isEqualTo("12.3 % ± 3 %");
    }

    @Test
    void leaveOutTheUnit() {
      assertThat(text("LAB_RESULT", 12.3, 0.4)).isEqualTo("12.3 ± 0.4");
      assertThat(text("LAB_RESULT", 12.3, 0.4, null, null, "percent")).isEqualTo("12.3 ± 3 %");
    }
  }

  @Nested
  class Limits {

    @ParameterizedTest
    @CsvSource({
      "0, 0.5, plain, 0.0 ± 0.5 mm",
      "0, 0.5, brief, 0.0(5) mm",
      "0.04, 0.5, plain, 0.0 ± 0.5 mm",
      "-0.04, 0.5, plain, 0.0 ± 0.5 mm",
      "3, 20, plain, 0 ± 20 mm",
      "-12.34, 0.05, plain, -12.34 ± 0.05 mm",
      "-12.34, 0.05, brief, -12.34(5) mm",
      "-12.34, 0.05, percent, -12.34 mm ± 0.4 %",
      "-12.34, 0.05, scientific, (-1.234 ± 0.005)×10^1 mm",
      "1234, 200, plain, 1200 ± 200 mm",
      "1234, 200, brief, 1200(200) mm",
      "1234, 200, scientific, (1.2 ± 0.2)×10^3 mm",
      "0.2, 5, scientific, (0 ± 5)×10^0 mm",
      "9.996, 0.02, plain, 10.00 ± 0.02 mm",
    })
    void areWellDefined(double value, double uncertainty, String style, String expected) {
      assertThat(text("LAB_RESULT", value, uncertainty, "mm", null, style)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
      "9999999.6, 2, plain, (1.0000000 ± 0.0000002)×10^7 m",
      "0.0000123, 0.0000004, plain, (1.23 ± 0.04)×10^-5 m",
      "0.0000123, 0.0000004, brief, 1.23(4)×10^-5 m",
      "0.0000123, 0.0000004, percent, 1.23×10^-5 m ± 3 %",
      "1e300, 2e298, plain, (1.00 ± 0.02)×10^300 m",
      "1, 1e300, plain, (0.0 ± 1.0)×10^300 m",
      "5e-324, 5e-324, plain, (5 ± 5)×10^-324 m",
      "1.7e308, 0.4e308, plain, (1.7 ± 0.4)×10^308 m",
    })
    void needAPowerOfTen(double value, double uncertainty, String style, String expected) {
      assertThat(text("LAB_RESULT", value, uncertainty, "m", null, style)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
      "12.340, mm, plain, 12.34 mm (exact)",
      "0, mm, brief, 0 mm (exact)",
      "1200, , percent, 1200 (exact)",
      "3e-9, m, scientific, 3×10^-9 m (exact)",
    })
    void includeNoUncertainty(double value, String unit, String style, String expected) {
      assertThat(text("LAB_RESULT", value, 0, unit, null, style)).isEqualTo(expected);
    }
  }

  @Nested
  class BadArguments {

    @Test
    void areExplainedInTheCell() {
      assertThat(text("LAB_RESULT", 12.3, -0.1))
          .isEqualTo("LAB_RESULT: uncertainty is -0.1; it must be a number, zero or greater.");
      assertThat(text("LAB_RESULT", "12 mm", 0.1)).contains("value is the text \"12 mm\"");
      assertThat(text("LAB_RESULT", 12.3)).contains("uncertainty is blank");
      assertThat(text("LAB_RESULT", 12.3, 0.1, "mm", "few"))
          .isEqualTo(
              "LAB_RESULT: digits is the text \"few\"; it must be a whole number from 1 to 15,"
                  + " bench, standard or pdg.");
      assertThat(text("LAB_RESULT", 12.3, 0.1, "mm", 0)).contains("digits is 0");
      assertThat(text("LAB_RESULT", 12.3, 0.1, "mm", 1, "long"))
          .contains("it must be one of plain, brief, percent, scientific.");
    }

    @Test
    void includeAUnitThatLooksLikeANumber() {
      assertThat(text("LAB_RESULT", 12.3, 0.1, 5))
          .isEqualTo(
              "LAB_RESULT: unit is 5; it must be a text that starts with a letter, a sign such as %"
                  + " or 1/, and has no ±.");
    }

    @Test
    void includeThePercentageOfZero() {
      assertThat(text("LAB_RESULT", 0.04, 0.2, "mm", null, "percent"))
          .isEqualTo(
              "LAB_RESULT: value rounds to zero beside its uncertainty; for the style percent it"
                  + " must be a number that does not.");
    }
  }
}
