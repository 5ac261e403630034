package tenthmark.measurement.rounding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A value and its uncertainty rounded to one place, which both scales keep.
 *
 * @param value rounded to the place of the uncertainty, half to even at a tie
 * @param uncertainty rounded half up; zero for an exact value, which is not rounded
 */
public record Rounded(BigDecimal value, BigDecimal uncertainty) {

  /**
   * Rounds a value to its uncertainty (JCGM 100:2008, 7.2.6), both as they are {@link Written}.
   *
   * @param uncertainty zero or greater, in the unit of the value
   * @param digits how many digits the uncertainty keeps
   */
  public static Rounded of(BigDecimal value, BigDecimal uncertainty, DigitsRule digits) {
    if (uncertainty.signum() == 0) {
      return new Rounded(value, BigDecimal.ZERO);
    }
    BigDecimal rounded = digits.round(uncertainty);
    return new Rounded(Written.toDecimals(value, rounded.scale(), RoundingMode.HALF_EVEN), rounded);
  }

  /** Whether there is no uncertainty. */
  public boolean isExact() {
    return uncertainty.signum() == 0;
  }
}
