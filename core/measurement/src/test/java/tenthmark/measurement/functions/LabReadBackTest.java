package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.text;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.catalogue.Value;

class LabReadBackTest {

  @Nested
  class Records {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "12.34 ± 0.05 mm          | 12.34   | 0.05    | mm",
          "12.34(5) mm              | 12.34   | 0.05    | mm",
          "12.34 mm ± 0.4 %         | 12.34   | 0.04936 | mm",
          "(1.234 ± 0.005)×10^1 mm  | 12.34   | 0.05    | mm",
          "12.34 mm (exact)         | 12.34   | 0       | mm",
          "-12.34(5) 1/s            | -12.34  | 0.05    | 1/s",
          "1200(100) m/s^2          | 1200    | 100     | m/s^2",
          "18.0(1.2) C              | 18      | 1.2     | C",
          "18.0(12) C               | 18      | 1.2     | C",
          "1.23(4)×10^-5 m          | 1.23e-5 | 0.04e-5 | m",
          "(12 ± 3) %               | 12      | 3       | %",
          "12 % ± 30 %              | 12      | 3.6     | %",
          "12.34 mm ± 0.05 mm       | 12.34   | 0.05    | mm",
        })
    void comeInEveryStyle(String record, double value, double uncertainty, String unit) {
      assertReads(record, value, uncertainty, unit);
    }

    // JCGM 100:2008, 7.2.2 (from memory): three ways to write 100.02147 g with 0.35 mg
    @ParameterizedTest
    @ValueSource(strings = {"100.02147(35) g", "100.02147(0.00035) g", "(100.02147 ± 0.00035) g"})
    void comeAsInTheGuide(String record) {
      assertReads(record, 100.02147, 0.00035, "g");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "1234.5 +/- 0.5 kPa",
          "1234.5 +- 0.5 kPa",
          "1234,5 ± 0,5 kPa",
          "1234.5\u00A0±\u00A00.5\u00A0kPa",
          "1\u2009234.5 ± 0.5\u202FkPa",
          " 1234.5±0.5kPa ",
          "(1.2345 ± 0.0005)·10^3 kPa",
          "(1.2345 ± 0.0005) x 10^3 kPa",
          "(1.2345 ± 0.0005)×10³ kPa",
          "(1.2345 +/- 0.0005)e3 kPa",
          "1.2345e3 ± 5e-1 kPa",
          "1.2345(5)E+3 kPa",
          "12345·10^-1 ± 0.5 kPa",
        })
    void comeAsStudentsTypeThem(String record) {
      assertReads(record, 1234.5, 0.5, "kPa");
    }

    @Test
    void mayHaveATypographicMinus() {
      assertReads("−1.5 ± 0.5 °C", -1.5, 0.5, "°C");
      assertReads("(−1.5 ± 0.5)×10⁻³ V", -1.5e-3, 0.5e-3, "V");
    }

    @Test
    void mayLackUncertaintyOrUnit() {
      assertThat(number("LAB_READBACK", "12.3 mm", "value")).isEqualTo(12.3);
      assertThat(number("LAB_READBACK", 12.3, "value")).isEqualTo(12.3);
      assertThat(call("LAB_READBACK", "12.3 ± 0.4", "unit")).isEqualTo(Value.BLANK);
      assertThat(fault("LAB_READBACK", "12.3 mm", "uncertainty"))
          .isEqualTo("LAB_READBACK: text states no uncertainty.");
    }

    private void assertReads(String record, double value, double uncertainty, String unit) {
      assertThat(number("LAB_READBACK", record, "value")).isEqualTo(value);
      assertThat(number("LAB_READBACK", record, "uncertainty")).isEqualTo(uncertainty);
      assertThat(text("LAB_READBACK", record, "unit")).isEqualTo(unit);
    }
  }

  @Nested
  class RoundTrip {

    private static final List<Object> DIGITS = List.of("bench", "standard", "pdg", 1, 2, 3);
    private static final List<String> UNITS =
        List.of(
            "mm", "1/s", "m/s^2", "%", "% of scale", "°C", "kg m^2", "N/(m s)", "eV", "µm", "Ω");

    @ParameterizedTest
    @ValueSource(strings = {"plain", "brief", "scientific"})
    void givesBackBothNumbersAndTheUnit(String style) {
      Random random = new Random(style.hashCode());
      for (int i = 0; i < 600; i++) {
        double uncertainty = magnitude(random, 300);
        double value = value(random, uncertainty);
        Object digits = DIGITS.get(random.nextInt(DIGITS.size()));
        String unit = UNITS.get(random.nextInt(UNITS.size()));
        String record = text("LAB_RESULT", value, uncertainty, unit, digits, style);
        assertThat(number("LAB_READBACK", record, "value"))
            .as(record)
            .isEqualTo(number("LAB_ROUNDEDVALUE", value, uncertainty, digits));
        assertThat(number("LAB_READBACK", record, "uncertainty"))
            .as(record)
            .isEqualTo(number("LAB_ROUNDEDERROR", value, uncertainty, digits));
        assertThat(text("LAB_READBACK", record, "unit")).as(record).isEqualTo(unit);
      }
    }

    @Test
    void givesBackThePercentage() {
      Random random = new Random(100);
      for (int i = 0; i < 600; i++) {
        double uncertainty = magnitude(random, 200);
        double value = uncertainty * (2 + random.nextInt(1000)) * (random.nextBoolean() ? 1 : -1);
        String unit = UNITS.get(random.nextInt(UNITS.size()));
        String record = text("LAB_RESULT", value, uncertainty, unit, 3, "percent");
        double rounded = number("LAB_ROUNDEDVALUE", value, uncertainty, 3);
        assertThat(number("LAB_READBACK", record, "value")).as(record).isEqualTo(rounded);
        assertThat(number("LAB_READBACK", record, "uncertainty"))
            .as(record)
            .isCloseTo(uncertainty, within(uncertainty * 0.0076));
        assertThat(text("LAB_READBACK", record, "unit")).as(record).isEqualTo(unit);
      }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "brief", "percent", "scientific"})
    void givesBackAnExactValue(String style) {
      Random random = new Random(0);
      for (int i = 0; i < 500; i++) {
        double value = value(random, magnitude(random, 300));
        String record = text("LAB_RESULT", value, 0, "mm", null, style);
        assertThat(number("LAB_READBACK", record, "value")).isEqualTo(value);
        assertThat(number("LAB_READBACK", record, "uncertainty")).isZero();
        assertThat(text("LAB_READBACK", record, "unit")).isEqualTo("mm");
      }
    }

    /** Sizes as in a lab, and one in ten from the whole range of a double. */
    private static double magnitude(Random random, int range) {
      int exponent =
          random.nextInt(10) == 0 ? random.nextInt(2 * range) - range : random.nextInt(16) - 8;
      return (0.01 + random.nextDouble()) * Math.pow(10, exponent);
    }

    private static double value(Random random, double uncertainty) {
      return random.nextGaussian() * uncertainty * Math.pow(10, random.nextInt(7) - 2);
    }
  }

  @Nested
  class BadArguments {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "about 12 mm",
          "12.34 m ± 5 mm",
          "12.34 ± mm",
          "12.34 ± -0.05 mm",
          "1,234.5 ± 0.5",
          "12.34 ± 0.05 ± 0.02",
          "12 345 ± 5 mm",
          "LAB_RESULT: uncertainty is -0.1; it must be a number, zero or greater.",
        })
    void includeATextThatIsNoRecord(String text) {
      assertThat(fault("LAB_READBACK", text, "value"))
          .isEqualTo(
              "LAB_READBACK: text is not a record that can be read; it must be a text such as 12.34"
                  + " ± 0.05 mm, with one unit.");
    }

    @Test
    void includeALongOneWithoutDelay() {
      assertThat(fault("LAB_READBACK", "1" + " ".repeat(32_000) + "(", "value"))
          .contains("not a record");
      assertThat(fault("LAB_READBACK", "1 a" + " ".repeat(1_900) + "±", "value"))
          .contains("not a record");
    }

    @Test
    void includeANumberBeyondTheLargestAndAnUnknownPart() {
      assertThat(fault("LAB_READBACK", "(2 ± 1)×10^400 m", "value"))
          .contains("the result is too large");
      assertThat(fault("LAB_READBACK", "12 ± 1 m", "size"))
          .isEqualTo(
              "LAB_READBACK: part is the text \"size\"; it must be one of value, uncertainty,"
                  + " unit.");
    }
  }
}
