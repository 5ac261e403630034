package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.measurement.functions.Calls.column;
import static tenthmark.measurement.functions.Calls.fault;
import static tenthmark.measurement.functions.Calls.number;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LabFuzzyTest {

  @Nested
  class SoftEnds {

    // common practice, no source: half of what is blurred, once for each end
    @Test
    void addHalfOfEachExtent() {
      assertThat(number("LAB_FUZZY", 3)).isEqualTo(1.5);
      assertThat(number("LAB_FUZZY", 3, 2)).isEqualTo(2.5);
    }

    @Test
    void canBeARangeWithBlankCells() {
      assertThat(number("LAB_FUZZY", column(0.2, null, 0.4))).isEqualTo(0.3);
    }

    @Test
    void leaveOutABlankArgument() {
      assertThat(number("LAB_FUZZY", 3, null, 2)).isEqualTo(2.5);
    }

    @Test
    void giveZeroForASharpEnd() {
      assertThat(number("LAB_FUZZY", 0)).isZero();
    }

    @Test
    void keepAVeryLargeExtent() {
      assertThat(number("LAB_FUZZY", 1e308, 1e308)).isEqualTo(1e308);
    }
  }

  @Nested
  class BadArguments {

    @Test
    void nameTheExtent() {
      assertThat(fault("LAB_FUZZY", -1))
          .isEqualTo("LAB_FUZZY: extent (row 1) is -1; it must be a number, zero or greater.");
      assertThat(fault("LAB_FUZZY", column(1, "soft")))
          .isEqualTo(
              "LAB_FUZZY: extent (row 2) is the text \"soft\"; it must be a number, zero or"
                  + " greater.");
    }

    @Test
    void includeNothingAtAll() {
      assertThat(fault("LAB_FUZZY"))
          .isEqualTo("LAB_FUZZY: extent is blank; it must be a range with at least 1 number.");
      assertThat(fault("LAB_FUZZY", column(null, null)))
          .isEqualTo(
              "LAB_FUZZY: extent is a range with no numbers; it must be a range with at least 1"
                  + " number.");
    }
  }
}
