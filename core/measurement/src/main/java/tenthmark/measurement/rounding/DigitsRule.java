package tenthmark.measurement.rounding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How many significant digits of an uncertainty are kept. */
public sealed interface DigitsRule {

  /**
   * Rounds an uncertainty, half up, as it is {@link Written}. A carry keeps the number of digits:
   * 0.0996 to two digits is 0.10.
   *
   * @param uncertainty greater than zero
   */
  BigDecimal round(BigDecimal uncertainty);

  /**
   * Always so many.
   *
   * @param digits at least 1
   */
  record Fixed(int digits) implements DigitsRule {
    @Override
    public BigDecimal round(BigDecimal uncertainty) {
      BigDecimal rounded = Written.toDigits(uncertainty, digits);
      return rounded.setScale(rounded.scale() + digits - rounded.precision());
    }
  }

  /**
   * One, and two where the first digit before rounding is 1: 0.14 stays, 0.195 is 0.20, 0.096 is
   * 0.1. Common practice, no source.
   */
  record Bench() implements DigitsRule {
    @Override
    public BigDecimal round(BigDecimal uncertainty) {
      return new Fixed(leading(uncertainty, 1) == 1 ? 2 : 1).round(uncertainty);
    }
  }

  /**
   * By the first three digits: two for 100 to 354, one for 355 to 949, and from 950 up to the next
   * power of ten with two (Review of Particle Physics, Introduction, 5.3).
   */
  record ParticleData() implements DigitsRule {
    @Override
    public BigDecimal round(BigDecimal uncertainty) {
      int leading = leading(uncertainty, 3);
      if (leading < 355) {
        return new Fixed(2).round(uncertainty);
      }
      BigDecimal one = new Fixed(1).round(uncertainty);
      return leading < 950 ? one : one.setScale(one.scale() + 1);
    }
  }

  /** The first digits, cut off after {@code count}, as a whole number. */
  private static int leading(BigDecimal number, int count) {
    BigDecimal written = Written.of(number, count);
    return written
        .round(new MathContext(count, RoundingMode.DOWN))
        .movePointRight(count - 1 - PowerOfTen.of(written).exponent())
        .intValue();
  }
}
