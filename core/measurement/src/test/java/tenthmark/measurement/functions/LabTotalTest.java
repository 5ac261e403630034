package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;
import static tenthmark.measurement.functions.Calls.row;
import static tenthmark.measurement.functions.Calls.table;

import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.catalogue.Value;

class LabTotalTest {

  @Nested
  class PublishedTotals {

    // Harvey, Modern Analytical Chemistry (2000), ch. 4C: two deliveries of 9.992 +/- 0.006 mL
    @Test
    void agreeForThePipet() {
      Value deliveries = column(0.006, 0.006);
      assertThat(number("LAB_TOTAL", deliveries, "quadrature")).isCloseTo(0.0085, within(0.00005));
      assertThat(number("LAB_TOTAL", deliveries, "straight")).isEqualTo(0.012);
    }

    // JCGM 100:2008, H.1.3.5 (from memory, recomputed): 25, 9.7, 2.9 and 16.6 nm make 32 nm
    @Test
    void agreeForTheEndGauge() {
      assertThat(number("LAB_TOTAL", column(25, 9.7, 2.9, 16.6), "quadrature"))
          .isCloseTo(32, within(0.5));
    }

    // EA-4/02, S2 (from memory): the printed 29.3 mg is 29.24 from the rounded components
    @Test
    void agreeForTheWeight() {
      assertThat(number("LAB_TOTAL", weight(), "quadrature")).isCloseTo(29.3, within(0.1));
    }

    private Value weight() {
      return table(row(22.5, 8.66, 14.4, 5.77, 5.77));
    }

    // JCGM 100:2008, 5.1.5 (from memory, recomputed): 12 uV and 8.7 uV make 15 uV
    @Test
    void agreeForTheVoltmeter() {
      assertThat(number("LAB_TOTAL", column(12, 8.7), "quadrature")).isCloseTo(15, within(0.5));
    }
  }

  @Nested
  class Cells {

    @Test
    void addAsDecimals() {
      assertThat(number("LAB_TOTAL", column(0.1, 0.2))).isEqualTo(0.3);
    }

    @Test
    void mayBeBlankOrOnlyOne() {
      assertThat(number("LAB_TOTAL", column(0.5, null, 0.25))).isEqualTo(0.75);
      assertThat(number("LAB_TOTAL", 0.5, "quadrature")).isEqualTo(0.5);
      assertThat(number("LAB_TOTAL", column(0, 0), "quadrature")).isZero();
    }

    @Test
    void mayBeVeryLargeOrVerySmall() {
      assertThat(number("LAB_TOTAL", column(3e300, 4e300), "quadrature")).isEqualTo(5e300);
      assertThat(number("LAB_TOTAL", column(3e-320, 4e-320), "quadrature")).isEqualTo(5e-320);
    }
  }

  @Nested
  class Laws {

    @Test
    void straightIsTheUpperBoundAndScales() {
      Random random = new Random(20);
      for (int i = 0; i < 500; i++) {
        double a = random.nextDouble();
        double b = random.nextDouble() * 10;
        double straight = number("LAB_TOTAL", column(a, b));
        double quadrature = number("LAB_TOTAL", column(a, b), "quadrature");
        assertThat(quadrature).isBetween(Math.max(a, b), straight);
        assertThat(quadrature).isCloseTo(Math.hypot(a, b), within(1e-14));
        assertThat(number("LAB_TOTAL", column(8 * b, 8 * a), "quadrature"))
            .isCloseTo(8 * quadrature, within(1e-13));
      }
    }
  }

  @Nested
  class BadArguments {

    @Test
    void areNamedByTheirPlace() {
      assertThat(fault("LAB_TOTAL", column(0.1, -0.2)))
          .isEqualTo(
              "LAB_TOTAL: contributions (row 2) is -0.2; it must be a number, zero or greater.");
      assertThat(fault("LAB_TOTAL", table(row(0.1, 0.2), row(0.3, "2 mm"))))
          .contains("contributions (row 2, column 2) is the text \"2 mm\"");
      assertThat(fault("LAB_TOTAL", column(0.1, new Value.Fault("#DIV/0!"))))
          .contains("contributions (row 2) is the error #DIV/0!");
    }

    @Test
    void includeAnEmptyRangeAndAnUnknownWay() {
      assertThat(fault("LAB_TOTAL", column(null, null)))
          .isEqualTo(
              "LAB_TOTAL: contributions is a range with no numbers; it must be a range with at"
                  + " least 1 number.");
      assertThat(fault("LAB_TOTAL", column(1, 2), "squares"))
          .isEqualTo(
              "LAB_TOTAL: combine is the text \"squares\"; it must be one of straight,"
                  + " quadrature.");
    }

    @Test
    void includeATotalBeyondTheLargestNumber() {
      assertThat(fault("LAB_TOTAL", column(1.7e308, 1.7e308))).contains("the result is too large");
    }
  }
}
