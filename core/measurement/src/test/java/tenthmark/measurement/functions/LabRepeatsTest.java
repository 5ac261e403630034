package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.catalogue.Value;

class LabRepeatsTest {

  @Nested
  class PublishedScatter {

    // NIST StRD, univariate summary statistics, certified standard deviations. NumAcc4's decimals
    // cannot be held in a double: 1e-7 is what they allow.
    @ParameterizedTest
    @CsvSource({
      "lottery, 218, 291.699727470969, 1e-12",
      "michelso, 100, 0.0790105478190518, 1e-10",
      "numacc1, 3, 1, 1e-14",
      "numacc2, 1001, 0.1, 1e-12",
      "numacc4, 1001, 0.1, 1e-7",
    })
    void agreesWithTheCertifiedOne(
        String set, int count, double standardDeviation, double relative) {
      double[] values = strd(set);
      assertThat(values).hasSize(count);
      assertThat(number("LAB_REPEATS", cells(values)) * Math.sqrt(count))
          .isCloseTo(standardDeviation, within(relative * standardDeviation));
    }

    // JCGM 100:2008, 4.4.3, table 1 (from memory, recomputed): s = 1.489, s/sqrt(20) = 0.333
    @Test
    void agreesForTheTemperatures() {
      Value temperatures =
          column(
              96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42,
              100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72);
      assertThat(number("LAB_REPEATS", temperatures)).isCloseTo(0.333, within(0.0005));
    }

    // Harvey, Modern Analytical Chemistry (2000), ch. 4, seven pennies (from memory, recomputed):
    // range 0.142 g, s = 0.051 g
    @Test
    void agreesForThePennies() {
      Value pennies = column(3.080, 3.094, 3.107, 3.056, 3.112, 3.174, 3.198);
      assertThat(number("LAB_REPEATS", pennies, "halfrange")).isEqualTo(0.071);
      assertThat(number("LAB_REPEATS", pennies) * Math.sqrt(7)).isCloseTo(0.051, within(0.0005));
    }

    // NIST TN 1297 (1994), table B.1, column 95 %: the same as JCGM 100:2008, table G.2
    @ParameterizedTest
    @CsvFileSource(
        resources = "/reference/tables/student-t-table-b1-g2.csv",
        useHeadersInDisplayName = true)
    void widensByStudentsFactor(
        String freedom,
        double p6827,
        double p90,
        double p95,
        double p9545,
        double p99,
        double p9973) {
      if (freedom.equals("inf")) {
        return;
      }
      Value values = cells(IntStream.rangeClosed(0, Integer.parseInt(freedom)).asDoubleStream());
      assertThat(number("LAB_REPEATS", values, "t95") / number("LAB_REPEATS", values, "sdom"))
          .isCloseTo(p95, within(0.005));
    }
  }

  @Nested
  class Cells {

    @Test
    void mayBeBlankAndInRows() {
      assertThat(number("LAB_REPEATS", table(row(1, null), row(3, null)))).isEqualTo(1);
      assertThat(number("LAB_REPEATS", column(1, null, 3), "halfrange")).isEqualTo(1);
    }

    @Test
    void mayAllBeEqual() {
      assertThat(number("LAB_REPEATS", column(0.1, 0.1, 0.1), "t95")).isZero();
      assertThat(number("LAB_REPEATS", column(0.1, 0.1, 0.1), "halfrange")).isZero();
      assertThat(number("LAB_REPEATS", column(0, 0))).isZero();
    }

    @Test
    void mayBeVeryLargeOrVerySmall() {
      assertThat(number("LAB_REPEATS", column(1e300, 3e300)))
          .isCloseTo(1e300, withinPercentage(1e-10));
      assertThat(number("LAB_REPEATS", column(-1.5e308, 1.5e308), "halfrange")).isEqualTo(1.5e308);
      assertThat(number("LAB_REPEATS", column(-1.5e308, 1.5e308)))
          .isCloseTo(1.5e308, withinPercentage(1e-10));
      assertThat(number("LAB_REPEATS", column(1e-320, 3e-320)))
          .isCloseTo(1e-320, withinPercentage(0.1));
    }
  }

  @Nested
  class Floor {

    @ParameterizedTest
    @ValueSource(strings = {"sdom", "halfrange", "t95"})
    void isTheLeastResult(String how) {
      assertThat(number("LAB_REPEATS", column(5, 5, 5), how, 0.25)).isEqualTo(0.25);
      assertThat(number("LAB_REPEATS", column(1, 9), how, 0.25)).isGreaterThan(3.9);
    }
  }

  @Nested
  class Laws {

    @ParameterizedTest
    @ValueSource(strings = {"sdom", "halfrange", "t95"})
    void shiftsChangeNothingAndScalesScale(String how) {
      Random random = new Random(42);
      for (int i = 0; i < 200; i++) {
        double[] values = random.doubles(2 + random.nextInt(20)).toArray();
        double uncertainty = number("LAB_REPEATS", cells(values), how);
        double[] shifted = DoubleStream.of(values).map(value -> value + 100).toArray();
        double[] scaled = DoubleStream.of(values).map(value -> value * -64).toArray();
        assertThat(number("LAB_REPEATS", cells(shifted), how))
            .isCloseTo(uncertainty, within(1e-12));
        assertThat(number("LAB_REPEATS", cells(scaled), how))
            .isCloseTo(64 * uncertainty, within(1e-12));
      }
    }
  }

  @Nested
  class BadArguments {

    @Test
    void includeFewerThanTwoReadings() {
      assertThat(fault("LAB_REPEATS", column(5, null)))
          .isEqualTo(
              "LAB_REPEATS: values is a range with 1 number; it must be a range with at least 2"
                  + " numbers.");
      assertThat(fault("LAB_REPEATS", column(null, null))).contains("a range with no numbers");
    }

    @Test
    void nameTheCell() {
      assertThat(fault("LAB_REPEATS", column(5, "5.1 s")))
          .isEqualTo("LAB_REPEATS: values (row 2) is the text \"5.1 s\"; it must be a number.");
      assertThat(fault("LAB_REPEATS", column(5, new Value.Fault("#N/A"))))
          .contains("values (row 2) is the error #N/A");
    }

    @Test
    void nameTheOtherArguments() {
      assertThat(fault("LAB_REPEATS", column(5, 6), "range"))
          .contains("how is the text \"range\"; it must be one of sdom, halfrange, t95.");
      assertThat(fault("LAB_REPEATS", column(5, 6), "sdom", -1)).contains("floor is -1");
    }
  }

  private static Value cells(double... values) {
    return cells(DoubleStream.of(values));
  }

  private static Value cells(DoubleStream values) {
    return column(values.boxed().toArray());
  }

  private static double[] strd(String set) {
    String path = "/reference/nist-strd/" + set + ".csv";
    try (InputStream stream = LabRepeatsTest.class.getResourceAsStream(path)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .mapToDouble(Double::parseDouble)
          .toArray();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
