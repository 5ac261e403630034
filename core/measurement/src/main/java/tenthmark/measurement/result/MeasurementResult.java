package tenthmark.measurement.result;

import java.math.BigDecimal;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.rounding.Rounded;

/**
 * A value with its uncertainty and unit, before rounding.
 *
 * @param uncertainty zero or greater, in the unit of the value; zero for an exact value
 * @param unit empty for none
 */
public record MeasurementResult(BigDecimal value, BigDecimal uncertainty, String unit) {

  /** A result from numbers as cells hold them. */
  public static MeasurementResult of(double value, double uncertainty, String unit) {
    return new MeasurementResult(Decimals.shortest(value), Decimals.shortest(uncertainty), unit);
  }

  /** The value and its uncertainty rounded to one place. */
  public Rounded rounded(DigitsRule digits) {
    return Rounded.of(value, uncertainty, digits);
  }
}
