package tenthmark.measurement.rounding;

import java.math.BigDecimal;
import java.util.Arrays;

/**
 * A power of ten in front of which numbers are written, all with the same one.
 *
 * @param exponent 0 for none
 */
public record PowerOfTen(int exponent) {

  private static final int SMALLEST_WITHOUT = -4;
  private static final int LARGEST_WITHOUT = 6;

  /** The power of the largest of some numbers. */
  public static PowerOfTen of(BigDecimal... numbers) {
    return new PowerOfTen(Arrays.stream(numbers).mapToInt(PowerOfTen::leading).max().orElse(0));
  }

  /**
   * The power of the largest of some numbers if that is below 0.0001 or from ten million, and none
   * otherwise.
   */
  public static PowerOfTen ifNeeded(BigDecimal... numbers) {
    PowerOfTen power = of(numbers);
    return power.exponent < SMALLEST_WITHOUT || power.exponent > LARGEST_WITHOUT
        ? power
        : new PowerOfTen(0);
  }

  /** Shows one number, with a power of ten if it needs one: 12.5 or 1.25×10^8. */
  public static String show(BigDecimal number) {
    return show(number, DecimalSign.POINT);
  }

  /** Shows one number, with a power of ten if it needs one: 12.5 or 1.25×10^8. */
  public static String show(BigDecimal number, DecimalSign sign) {
    PowerOfTen power = ifNeeded(number);
    return power.digits(number, sign) + (power.exponent == 0 ? "" : power);
  }

  /** Shows one number in a sentence, to at most so many significant digits. */
  public static String show(BigDecimal number, int digits) {
    return show(number, digits, DecimalSign.POINT);
  }

  /** Shows one number in a sentence, to at most so many significant digits. */
  public static String show(BigDecimal number, int digits, DecimalSign sign) {
    return show(Written.toDigits(number, digits).stripTrailingZeros(), sign);
  }

  /** The digits of a number in front of this power. */
  public String digits(BigDecimal number, DecimalSign sign) {
    return sign.write(number.scaleByPowerOfTen(-exponent));
  }

  /** As it is written behind the digits: ×10^8. */
  @Override
  public String toString() {
    return "×10^" + exponent;
  }

  private static int leading(BigDecimal number) {
    return number.precision() - number.scale() - 1;
  }
}
