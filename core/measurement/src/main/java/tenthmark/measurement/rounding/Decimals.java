package tenthmark.measurement.rounding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The decimal number that a person means by a double. */
public final class Decimals {

  private Decimals() {}

  /**
   * The decimal with the fewest digits that gives this double back, the nearest one where several
   * do: 0.15 is fifteen hundredths here, not the binary fraction just below it. Trailing zeros are
   * stripped.
   *
   * @param number finite
   */
  public static BigDecimal shortest(double number) {
    BigDecimal exact = new BigDecimal(number);
    // Double.toString is not always shortest before Java 19, so try with fewer digits than it has.
    BigDecimal shortest = new BigDecimal(Double.toString(number)).stripTrailingZeros();
    for (int digits = shortest.precision() - 1; digits > 0; digits--) {
      BigDecimal shorter = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (shorter.doubleValue() != number) {
        break;
      }
      shortest = shorter;
    }
    return shortest.stripTrailingZeros();
  }
}
