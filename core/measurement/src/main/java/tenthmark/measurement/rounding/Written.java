package tenthmark.measurement.rounding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number as a person writes it before rounding it. What a computer calculates is off in its last
 * digits, and a difference in more of them: 0.7 × 0.35 comes to 0.24499999999999997 and (100.4 −
 * 100.1) / 2 to 0.1500000000000057. Whether a number lies half-way, and what its first digit is, is
 * therefore judged by 12 significant digits, which no one types and no calculation with a lab's
 * numbers spoils. A number that has to keep more digits is judged by 15, all that a double has.
 */
public final class Written {

  private static final MathContext TWELVE = new MathContext(12, RoundingMode.HALF_EVEN);
  private static final MathContext FIFTEEN = new MathContext(15, RoundingMode.HALF_EVEN);

  private Written() {}

  /**
   * The number to the digits by which it is judged.
   *
   * @param kept how many significant digits it is to keep
   */
  static BigDecimal of(BigDecimal number, int kept) {
    return number.round(kept < TWELVE.getPrecision() ? TWELVE : FIFTEEN);
  }

  /** The number to 12 significant digits, for comparisons. */
  public static BigDecimal of(BigDecimal number) {
    return number.round(TWELVE);
  }

  /** Rounds to a number of decimals, negative ones counting to the left of the point. */
  public static BigDecimal toDecimals(BigDecimal number, int decimals, RoundingMode mode) {
    return of(number, number.precision() - number.scale() + decimals).setScale(decimals, mode);
  }

  /** Rounds to a number of significant digits, a half up. */
  static BigDecimal toDigits(BigDecimal number, int digits) {
    return of(number, digits).round(new MathContext(digits, RoundingMode.HALF_UP));
  }

  /**
   * The decimal that stands for a double in a sentence: the shortest one that gives it back, and 12
   * significant digits where that has more than 15 and so was calculated.
   */
  public static BigDecimal shown(double number) {
    BigDecimal shortest = Decimals.shortest(number);
    return shortest.precision() > FIFTEEN.getPrecision()
        ? of(shortest).stripTrailingZeros()
        : shortest;
  }
}
