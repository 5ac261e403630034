package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabHandTimedTest {

  // common practice, no source: 0.2 s, spread over the cycles timed in one go
  @Test
  void sharesTheReactionTimeBetweenTheCycles() {
    assertThat(number("LAB_HANDTIMED")).isEqualTo(0.2);
    assertThat(number("LAB_HANDTIMED", 20)).isEqualTo(0.01);
    assertThat(number("LAB_HANDTIMED", 10, 0.3)).isEqualTo(0.03);
    assertThat(number("LAB_HANDTIMED", null, 0.3)).isEqualTo(0.3);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "-3, -3", "2.5, 2.5", "2000000, 2000000"})
  void refusesCyclesThatCannotBeCounted(double cycles, String shown) {
    assertThat(fault("LAB_HANDTIMED", cycles))
        .isEqualTo(
            "LAB_HANDTIMED: cycles is " + shown + "; it must be a whole number from 1 to 1000000.");
  }

  @Test
  void refusesAReactionTimeThatIsNotPositive() {
    assertThat(fault("LAB_HANDTIMED", 1, 0)).contains("reaction is 0");
    assertThat(fault("LAB_HANDTIMED", 1, "quick")).contains("reaction is the text \"quick\"");
  }
}
