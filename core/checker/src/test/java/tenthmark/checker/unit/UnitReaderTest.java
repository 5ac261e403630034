package tenthmark.checker.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.wording.CheckerTexts;

class UnitReaderTest {

  private static final UnitReader READER = UnitReader.STANDARD;

  private static MeasurementUnit unit(String text) {
    return READER
        .read(text)
        .known()
        .orElseThrow(() -> new AssertionError(READER.read(text).toString()));
  }

  private static Conversion conversion(String from, String to) {
    return unit(from)
        .to(unit(to))
        .orElseThrow(() -> new AssertionError(from + " does not convert to " + to));
  }

  @Nested
  class Spellings {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "mm", "cm", "m", "g", "kg", "s", "min", "h", "bar", "kPa", "N/m", "N·m", "kg m^2",
          "kg*m²", "m/s²", "rad/s", "°", "%", "µm", "um", "1/s", "Hz", "rpm", "L", "mL", "°C"
        })
    void ofTheClassroomAreKnown(String text) {
      assertThat(READER.read(text)).isInstanceOf(UnitText.Known.class);
    }

    @ParameterizedTest
    @CsvSource({
      "kg m^2, kg·m²",
      "kg*m2, kg·m²",
      "kg × m ^2, kg·m²",
      "kg m**2, kg·m²",
      "m²·kg, kg m^2",
      "N m, Nm",
      "N.m, N·m",
      "N·m, J",
      "m/s/s, m/s²",
      "m s^-2, m/s²",
      "m s-2, m/s^2",
      "m·s⁻², m/s²",
      "m s^(-2), m/s²",
      "m s−2, m/s²",
      "s⁻¹, 1/s",
      "1/s, Hz",
      "µm, μm",
      "um, µm",
      "uL, mm³",
      "° C, °C",
      "ºC, °C",
      "℃, degC",
      "deg, °",
      "sec, s",
      "L, l",
      "J/kg/K, J/(kg·K)",
      "J/(kg K), J kg^-1 K^-1",
      "J/(kg·°C), J/(kg·K)",
      "rev/min, rpm",
      "rev per min, rpm",
      "N m/rad, N·m/rad",
      "1, none",
      "–, 1"
    })
    void ofOneUnitAreTheSame(String one, String other) {
      assertThat(unit(one).isSameAs(unit(other))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
      "mm, cm",
      "mN, MN",
      "ms, min",
      "g, kg",
      "K, °C",
      "m, m²",
      "J/(kg·K), J·K/kg",
      "Pa, bar"
    })
    void ofDifferentUnitsAreNot(String one, String other) {
      assertThat(unit(one).isSameAs(unit(other))).isFalse();
    }
  }

  @Nested
  class UnknownUnits {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "''| there is no unit",
          "furlong| \"furlong\" is no known unit",
          "kkg| \"kkg\" is no known unit",
          "m/| \"m/\" ends too early",
          "(m| a bracket is not closed in \"(m\"",
          "m)| \")\" does not belong in a unit",
          "^2| \"^2\" does not belong in a unit",
          "2 mm| \"2 mm\" does not belong in a unit",
          "m^12| \"^12\" does not belong in a unit",
          "m,s| \",s\" does not belong in a unit",
          "=1+1| \"=1+1\" does not belong in a unit",
          "J/kg·K| \"J/kg·K\" can be read in two ways; put the denominator in brackets",
          "J/kg K| \"J/kg K\" can be read in two ways; put the denominator in brackets"
        })
    void areAnOutcomeWithAReason(String text, String reason) {
      assertUnknown(text, reason);
    }

    @Test
    void areTextsTooLongForAUnit() {
      String text = "(".repeat(5000);

      assertUnknown(text, "a unit has at most 60 characters");
    }

    private static void assertUnknown(String text, String reason) {
      assertThat(READER.read(text))
          .isInstanceOfSatisfying(
              UnitText.Unknown.class,
              unknown -> {
                assertThat(unknown.text()).isEqualTo(text);
                assertThat(CheckerTexts.english().say(unknown.reason())).isEqualTo(reason);
              });
    }

    @Test
    void neverThrowWhateverTheText() {
      String characters = "mskgNJ°%µ·*/^()-+12 ²⁻³.,'\"=\u0000\t\uD83D\uDE00Ω";
      Random random = new Random(4);
      for (int round = 0; round < 20_000; round++) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(12); length > 0; length--) {
          text.append(characters.charAt(random.nextInt(characters.length())));
        }
        assertThat(READER.read(text.toString()).text()).isEqualTo(text.toString());
      }
    }
  }

  @Nested
  class Conversions {

    /** Half a unit in the seventh digit. */
    private static final double SEVEN_DIGITS = 5.01e-7;

    @ParameterizedTest
    @CsvFileSource(resources = "/units/conversion-factors.csv", numLinesToSkip = 5)
    void followPublishedFactors(String from, String to, double factor, String source) {
      Conversion conversion = conversion(from, to);

      assertThat(conversion.value(1)).as(source).isCloseTo(factor, within(factor * SEVEN_DIGITS));
      assertThat(conversion.difference(1)).isCloseTo(factor, within(factor * SEVEN_DIGITS));
      assertThat(conversion(to, from).value(factor)).isCloseTo(1, within(SEVEN_DIGITS));
    }

    @ParameterizedTest
    @CsvSource({
      "mm, cm, 172.5, 17.25",
      "cm, mm, 17.25, 172.5",
      "g, kg, 3.3, 0.0033",
      "min, s, 2.5, 150",
      "km/h, m/s, 36, 10",
      "N/mm, N/m, 1.25, 1250",
      "kg m^2, g·cm², 0.0123, 123000",
      "%, 1, 12.5, 0.125"
    })
    void ofRoundNumbersAreExact(String from, String to, double number, double expected) {
      assertThat(conversion(from, to).value(number)).isEqualTo(expected);
    }

    /** NIST SP 811, B.8 and B.9: T/K = t/°C + 273.15, t/°C = (t/°F - 32)/1.8; from memory. */
    @ParameterizedTest
    @CsvSource({
      "°C, K, 20, 293.15, 1",
      "K, °C, 0, -273.15, 1",
      "°F, °C, 212, 100, 0.5555555555555556",
      "°F, °C, 32, 0, 0.5555555555555556",
      "°C, °F, 37, 98.6, 1.8"
    })
    void ofTemperaturesShiftValuesButNotDifferences(
        String from, String to, double number, double expected, double factor) {
      Conversion conversion = conversion(from, to);

      assertThat(conversion.value(number)).isCloseTo(expected, within(1e-9));
      assertThat(conversion.difference(0.5)).isCloseTo(0.5 * factor, within(1e-12));
      assertThat(conversion.isIdentity()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
      "mm, s",
      "kg, N",
      "N/m, N·m",
      "m/s, m/s²",
      "bar, N",
      "mm, 1",
      "°C, m",
      "kg·m², kg/m²",
      "W, J",
      "m³, m²"
    })
    void areRefusedBetweenDimensions(String from, String to) {
      assertThat(unit(from).to(unit(to))).isEmpty();
      assertThat(unit(to).to(unit(from))).isEmpty();
    }

    @Test
    void comeBackToTheNumberTheyStartedFrom() {
      List<List<String>> pairs =
          List.of(
              List.of("mm", "in"),
              List.of("bar", "psi"),
              List.of("°", "rad"),
              List.of("°C", "°F"),
              List.of("rpm", "rad/s"),
              List.of("kg m^2", "lb in^2"));
      Random random = new Random(811);
      for (List<String> pair : pairs) {
        for (int round = 0; round < 500; round++) {
          double number = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(7));
          double there = conversion(pair.get(0), pair.get(1)).value(number);
          assertThat(conversion(pair.get(1), pair.get(0)).value(there))
              .isCloseTo(number, within(1e-9 * Math.max(1, Math.abs(number))));
        }
      }
    }
  }

  /** An angular speed is 2 pi times the frequency of the turns: neither may pass for the other. */
  @Nested
  class Turning {

    @Test
    void countsTurnsBesideAFrequency() {
      assertThat(conversion("rpm", "Hz").value(60)).isCloseTo(1, within(1e-15));
      assertThat(conversion("rpm", "1/s").value(90)).isCloseTo(1.5, within(1e-15));
      assertThat(conversion("rev/s", "rpm").value(1)).isCloseTo(60, within(1e-12));
    }

    @Test
    void isAnAngleBesideAnAngle() {
      assertThat(conversion("rpm", "°/s").value(1)).isCloseTo(6, within(1e-12));
      assertThat(conversion("rev", "°").value(1)).isCloseTo(360, within(1e-12));
    }

    @Test
    void doesNotConvertAnAngularSpeedToAFrequency() {
      assertThat(unit("rad/s").to(unit("Hz"))).isEmpty();
      assertThat(unit("kHz").to(unit("mrad/s"))).isEmpty();
    }

    @Test
    void leavesTheRadianOutAsTheSiDoes() {
      assertThat(unit("rad/s").isSameAs(unit("1/s"))).isTrue();
      assertThat(unit("N·m/rad").isSameAs(unit("N m"))).isTrue();
    }
  }

  @Nested
  class Bounds {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "(((((((((m^9)^9)^9)^9)^9)^9)^9)^9)^9)^9",
          "((m^9)^9)^9",
          "(m^9)^9",
          "(m^5·s^6)^2",
          "m^9·s^9·kg^9",
          "((((m))))",
          "((((((((((((((((((((((((((((((((m",
        })
    void refuseWhatNoLabMeasures(String text) {
      assertThat(UnitReader.STANDARD.read(text)).isInstanceOf(UnitText.Unknown.class);
    }

    /** SI units of physics: radiance, permittivity, and the constant of Stefan and Boltzmann. */
    @ParameterizedTest
    @ValueSource(
        strings = {"W/(m²·sr)", "kg^-1·m^-3·s^4·A^2", "W/(m²·K⁴)", "((kg·m²)/(s³·A))/m", "(m^4)^2"})
    void letThoseOfPhysicsPass(String text) {
      assertThat(UnitReader.STANDARD.read(text)).isInstanceOf(UnitText.Known.class);
    }
  }
}
