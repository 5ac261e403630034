package tenthmark.measurement.formula;

import java.math.BigDecimal;
import java.math.MathContext;

/** The sentences for a step of a calculation that has no value or no slope. */
final class Trouble {

  private static final MathContext SIX_DIGITS = new MathContext(6);
  private static final double LARGEST_PLAIN = 1e9;

  private Trouble() {}

  static FormulaException undefined(String step, double value) {
    return new FormulaException(
        step + (Double.isInfinite(value) ? " is not defined or too large." : " is not defined."));
  }

  static FormulaException noSlope(String step) {
    return FormulaException.ofSlope(
        step
            + " jumps, bends or is infinitely steep at this value, so that no uncertainty can be"
            + " carried through it; LAB_EXTREMES or LAB_SIMULATE may help.");
  }

  /** A number as a sentence shows it, to six digits. */
  static String shown(double number) {
    if (!Double.isFinite(number)) {
      return "a number that is not finite";
    }
    if (number == Math.rint(number) && Math.abs(number) < LARGEST_PLAIN) {
      return Long.toString((long) number);
    }
    return new BigDecimal(number).round(SIX_DIGITS).stripTrailingZeros().toString();
  }
}
