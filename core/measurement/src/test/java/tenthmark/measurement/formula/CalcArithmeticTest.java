package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The boundaries of Calc's own arithmetic. That numbers which agree to 48 bits are equal and that
 * whole numbers are exact is documented with rtl::math::approxEqual of LibreOffice (from memory);
 * the corpus of formulas holds what a real Calc computed.
 */
class CalcArithmeticTest {

  @Nested
  class Equal {

    @ParameterizedTest
    @ValueSource(doubles = {1, -1, 0.3, 1e-200, 1e200})
    void areNumbersThatAgreeToFortyEightBits(double number) {
      assertThat(CalcArithmetic.equal(number, number * (1 + 0x1p-49))).isTrue();
      assertThat(CalcArithmetic.equal(number * (1 + 0x1p-49), number)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, -1, 0.3, 1e-200, 1e200})
    void areNoOthers(double number) {
      assertThat(CalcArithmetic.equal(number, number * (1 + 0x1p-47))).isFalse();
      assertThat(CalcArithmetic.equal(number * (1 + 0x1p-47), number)).isFalse();
    }

    @Test
    void areNumbersAndTheirOppositesNever() {
      assertThat(CalcArithmetic.equal(1e-300, -1e-300)).isFalse();
    }

    @Test
    void areWholeNumbersOnlyIfTheyAreTheSame() {
      assertThat(CalcArithmetic.equal(0x1p50, 0x1p50 + 1)).isFalse();
      assertThat(CalcArithmetic.equal(0x1p53, 0x1p53 - 1)).isFalse();
      assertThat(CalcArithmetic.equal(0x1p53, 0x1p53 + 2)).isTrue();
    }
  }

  @Nested
  class Sums {

    @Test
    void thatAlmostCancelAreZero() {
      assertThat(CalcArithmetic.add(0.1 + 0.2, -0.3)).isZero();
      assertThat(CalcArithmetic.add(-0.3, 0.1 + 0.2)).isZero();
      assertThat(CalcArithmetic.subtract(0.1 + 0.2, 0.3)).isZero();
      assertThat(CalcArithmetic.sum(new double[] {0.1, 0.2, -0.3})).isZero();
    }

    @Test
    void thatDoNotCancelKeepEveryBit() {
      assertThat(CalcArithmetic.add(1, -(1 - 0x1p-40))).isEqualTo(0x1p-40);
      assertThat(CalcArithmetic.add(1, 1 + 0x1p-49)).isEqualTo(2 + 0x1p-49);
    }

    // Neumaier (1974): what plain addition loses, 1 + 1e100 + 1 - 1e100 being 0 there
    @Test
    void carryTheErrorOfEachStepAlong() {
      assertThat(CalcArithmetic.sum(new double[] {1, 1e100, 1, -1e100, 5})).isEqualTo(7);
    }
  }

  @Nested
  class WholeNumbers {

    @Test
    void areThoseWhoseFirstFifteenDigitsAreWhole() {
      assertThat(CalcArithmetic.floor(3 - 0x1p-51)).isEqualTo(3);
      assertThat(CalcArithmetic.floor(3 - 1e-13)).isEqualTo(2);
      assertThat(CalcArithmetic.floor(-2.5)).isEqualTo(-3);
    }
  }
}
