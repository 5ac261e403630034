package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.functions.Calls.call;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.catalogue.Value;

class LabCountedTest {

  @Nested
  class Rates {

    // G. F. Knoll, Radiation Detection and Measurement, chapter 3, counting statistics (from
    // memory): 11 367 counts in 300 s are 37.89 ± 0.36 per second; 1071 counts less 521 of the
    // background in the same time are 550 ± 39.9 counts
    @Test
    void areThoseOfATextbook() {
      assertThat(rate(11_367, 300)).isCloseTo(37.89, within(0.005));
      assertThat(uncertainty(11_367, 300)).isCloseTo(0.36, within(0.005));
      assertThat(rate(1071, null, 521)).isEqualTo(550);
      assertThat(uncertainty(1071, null, 521)).isCloseTo(39.9, within(0.05));
    }

    // By hand: 400 in 100 s less 100 in 50 s: 4 - 2; sqrt((20/100)² + (10/50)²) = sqrt(0.08)
    @Test
    void subtractABackgroundOfAnotherTime() {
      assertThat(rate(400, 100, 100, 50)).isEqualTo(2);
      assertThat(uncertainty(400, 100, 100, 50)).isCloseTo(Math.sqrt(0.08), within(1e-15));
    }

    // By hand: 10 000 in 10 s with 100 µs blind after each: 1000/(1 - 0.1); 10/0.81
    @Test
    void addWhatTheCounterMissedWhileBlind() {
      assertThat(rate(10_000, 10, null, null, 1e-4)).isCloseTo(1000 / 0.9, within(1e-9));
      assertThat(uncertainty(10_000, 10, null, null, 1e-4)).isCloseTo(10 / 0.81, within(1e-12));
    }

    // Of a background as large as the counts nothing is left, and the dead time is that of both
    @Test
    void vanishWhereThereIsBackgroundOnly() {
      assertThat(rate(500, 20, 1000, 40, 0.002)).isCloseTo(0, within(1e-12));
    }

    // common practice, no source
    @Test
    void areUncertainByOneCountWhereNothingWasCounted() {
      assertThat(rate(0, 50)).isZero();
      assertThat(uncertainty(0, 50)).isEqualTo(1 / 50.0);
      assertThat(uncertainty(1, 50)).isEqualTo(1 / 50.0);
    }
  }

  @Nested
  class BadArguments {

    @Test
    void includeCountsThatAreNotWhole() {
      assertThat(Labels.sentence(call("LAB_COUNTED", 3.5, 10)))
          .isEqualTo(
              "LAB_COUNTED: counts is 3.5; it must be a number of counts: whole, zero or greater.");
      assertThat(Labels.sentence(call("LAB_COUNTED", 35, 10, -1))).contains("background is -1");
      assertThat(Labels.sentence(call("LAB_COUNTED", 35, 0))).contains("time is 0");
    }

    @Test
    void includeADeadTimeThatLeavesNoTime() {
      assertThat(Labels.sentence(call("LAB_COUNTED", 1000, 10, 2, 10, 0.01)))
          .isEqualTo(
              "LAB_COUNTED: counts times deadtime is no shorter than the time of counting: the"
                  + " counter cannot have counted that many.");
    }
  }

  private static double rate(Object... arguments) {
    return number(0, arguments);
  }

  private static double uncertainty(Object... arguments) {
    return number(1, arguments);
  }

  private static double number(int column, Object... arguments) {
    List<Value> row = ((Value.Table) call("LAB_COUNTED", arguments)).cells();
    assertThat(row).hasSize(2);
    return ((Value.Numeric) row.get(column)).number();
  }
}
