package tenthmark.checker.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.rounding.Written;
import tenthmark.measurement.wording.Message;

/** Numbers as findings compare and show them. */
final class Numbers {

  private static final double SAME = 1e-9;
  private static final int DIGITS = 6;
  private static final int FEW_DIGITS = 3;
  private static final double BEYOND_TWO_DIGITS = 0.01;

  private Numbers() {}

  /** A number to at most six digits. */
  static Message show(double number) {
    return Message.figure(PowerOfTen.show(Decimals.shortest(number), DIGITS));
  }

  /** A number to at most six digits with its unit, where it has one. */
  static Message show(double number, String unit) {
    return unit.isEmpty() || unit.equals("1")
        ? show(number)
        : Message.of("quantity", show(number), unit);
  }

  /** A number to at most three digits, as an uncertainty needs no more. */
  static Message showBriefly(double number) {
    return Message.figure(PowerOfTen.show(Decimals.shortest(number), FEW_DIGITS));
  }

  /** Whether two numbers are the same but for the last bits. */
  static boolean same(double one, double other) {
    return one == other || Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  }

  /**
   * Whether a number that was written down by hand is the exact one or the exact one rounded to the
   * digits written, of which at least one must be significant; a half may go either way.
   */
  static boolean agreesAsWritten(double written, double exact) {
    if (same(written, exact)) {
      return true;
    }
    if (exact == 0 || written == 0) {
      return false;
    }
    BigDecimal digits = Decimals.shortest(written);
    BigDecimal target = Written.of(Decimals.shortest(exact));
    int firstDigit = target.precision() - target.scale() - 1;
    return -digits.scale() <= firstDigit
        && (isRounded(target, digits, RoundingMode.HALF_UP)
            || isRounded(target, digits, RoundingMode.HALF_DOWN));
  }

  private static boolean isRounded(BigDecimal target, BigDecimal digits, RoundingMode mode) {
    return Written.toDecimals(target, digits.scale(), mode).compareTo(digits) == 0;
  }

  /**
   * Whether a number is the exact one as far as an uncertainty tells: within a hundredth, as where
   * 3.14 stands for pi, or rounded in the usual way or up.
   */
  static boolean agreesAsUncertainty(double written, double exact) {
    return agreesAsWritten(written, exact)
        || Math.abs(written - exact) <= BEYOND_TWO_DIGITS * Math.abs(exact)
        || isRoundedUp(written, exact);
  }

  private static boolean isRoundedUp(double written, double exact) {
    BigDecimal digits = Decimals.shortest(written);
    BigDecimal target = Written.of(Decimals.shortest(exact));
    return target.setScale(digits.scale(), RoundingMode.DOWN).signum() > 0
        && target.setScale(digits.scale(), RoundingMode.UP).compareTo(digits) == 0;
  }
}
