package tenthmark.measurement.formula;

import java.math.BigDecimal;
import java.math.MathContext;
import tenthmark.measurement.wording.Message;

/** The sentences for a step of a calculation that has no value or no slope. */
final class Trouble {

  private static final MathContext SIX_DIGITS = new MathContext(6);
  private static final double LARGEST_PLAIN = 1e9;

  private Trouble() {}

  static FormulaException undefined(String step, double value) {
    return FormulaException.ofError(
        Double.isInfinite(value) ? "formula.undefined.or.large" : "formula.undefined",
        new Message.Figure(step));
  }

  static FormulaException noSlope(String step) {
    return FormulaException.ofSlope("formula.no.slope", new Message.Figure(step));
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
