package tenthmark.measurement.result;

import java.math.BigDecimal;
import java.math.MathContext;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.rounding.Rounded;

/** The ways to write a result as a record text. {@link RecordText} reads them all. */
public enum Style {
  /** {@code 12.34 ± 0.05 mm}. */
  PLAIN {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits) {
      Rounded rounded = result.rounded(digits);
      PowerOfTen power = PowerOfTen.ifNeeded(rounded.value(), rounded.uncertainty());
      if (power.exponent() != 0) {
        return bracketed(rounded, power) + power + behind(result.unit());
      }
      // Without brackets a percent sign behind the uncertainty would make it a relative one.
      return result.unit().startsWith("%")
          ? bracketed(rounded, power) + behind(result.unit())
          : bothParts(rounded, power) + behind(result.unit());
    }
  },

  /** {@code 12.34(5) mm}: the uncertainty in units of the last digit, in full from 1 on. */
  BRIEF {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits) {
      Rounded rounded = result.rounded(digits);
      PowerOfTen power = PowerOfTen.ifNeeded(rounded.value(), rounded.uncertainty());
      String uncertainty = power.digits(rounded.uncertainty());
      return power.digits(rounded.value())
          + "("
          + (uncertainty.startsWith("0.") ? lastDigits(rounded) : uncertainty)
          + ")"
          + (power.exponent() == 0 ? "" : power)
          + behind(result.unit());
    }

    private static String lastDigits(Rounded rounded) {
      return rounded.uncertainty().unscaledValue().toString();
    }
  },

  /** {@code 12.34 mm ± 0.4 %}: the uncertainty in percent of the value. */
  PERCENT {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits) {
      BigDecimal percent =
          result
              .uncertainty()
              .movePointRight(2)
              .divide(result.value().abs(), MathContext.DECIMAL128);
      return PowerOfTen.show(result.rounded(digits).value())
          + behind(result.unit())
          + " ± "
          + PowerOfTen.show(digits.round(percent))
          + " %";
    }

    @Override
    public boolean canWrite(MeasurementResult result, DigitsRule digits) {
      Rounded rounded = result.rounded(digits);
      return rounded.isExact() || rounded.value().signum() != 0;
    }
  },

  /** {@code (1.234 ± 0.005)×10^1 mm}: always with a power of ten. */
  SCIENTIFIC {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits) {
      Rounded rounded = result.rounded(digits);
      PowerOfTen power = PowerOfTen.of(rounded.value(), rounded.uncertainty());
      return bracketed(rounded, power) + power + behind(result.unit());
    }
  };

  /** What stands behind a value without uncertainty. */
  static final String EXACT = "(exact)";

  /**
   * Writes a result, both parts rounded to one place and with one power of ten if they need one. A
   * result without uncertainty is written in full and called exact.
   */
  public String write(MeasurementResult result, DigitsRule digits) {
    return result.uncertainty().signum() == 0
        ? PowerOfTen.show(result.value()) + behind(result.unit()) + " " + EXACT
        : writeInexact(result, digits);
  }

  /** Whether the style has a meaning for a result: a zero value has no percentage. */
  public boolean canWrite(MeasurementResult result, DigitsRule digits) {
    return true;
  }

  abstract String writeInexact(MeasurementResult result, DigitsRule digits);

  private static String bracketed(Rounded rounded, PowerOfTen power) {
    return "(" + bothParts(rounded, power) + ")";
  }

  private static String bothParts(Rounded rounded, PowerOfTen power) {
    return power.digits(rounded.value()) + " ± " + power.digits(rounded.uncertainty());
  }

  private static String behind(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
