package tenthmark.measurement.result;

import java.math.BigDecimal;
import java.math.MathContext;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.rounding.Rounded;
import tenthmark.measurement.wording.Sentences;

/** The ways to write a result as a record text. {@link RecordText} reads them all. */
public enum Style {
  /** {@code 12.34 ± 0.05 mm}. */
  PLAIN {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits, DecimalSign sign) {
      Rounded rounded = result.rounded(digits);
      PowerOfTen power = PowerOfTen.ifNeeded(rounded.value(), rounded.uncertainty());
      if (power.exponent() != 0) {
        return bracketed(rounded, power, sign) + power + behind(result.unit());
      }
      // Without brackets a percent sign behind the uncertainty would make it a relative one.
      return result.unit().startsWith("%")
          ? bracketed(rounded, power, sign) + behind(result.unit())
          : bothParts(rounded, power, sign) + behind(result.unit());
    }
  },

  /** {@code 12.34(5) mm}: the uncertainty in units of the last digit, in full from 1 on. */
  BRIEF {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits, DecimalSign sign) {
      Rounded rounded = result.rounded(digits);
      PowerOfTen power = PowerOfTen.ifNeeded(rounded.value(), rounded.uncertainty());
      return power.digits(rounded.value(), sign)
          + "("
          + (isBelowOne(rounded.uncertainty(), power)
              ? lastDigits(rounded)
              : power.digits(rounded.uncertainty(), sign))
          + ")"
          + (power.exponent() == 0 ? "" : power)
          + behind(result.unit());
    }

    private static boolean isBelowOne(BigDecimal number, PowerOfTen power) {
      return number.scaleByPowerOfTen(-power.exponent()).compareTo(BigDecimal.ONE) < 0;
    }

    private static String lastDigits(Rounded rounded) {
      return rounded.uncertainty().unscaledValue().toString();
    }
  },

  /** {@code 12.34 mm ± 0.4 %}: the uncertainty in percent of the value. */
  PERCENT {
    @Override
    String writeInexact(MeasurementResult result, DigitsRule digits, DecimalSign sign) {
      Rounded rounded = result.rounded(digits);
      return PowerOfTen.show(rounded.value(), sign)
          + behind(result.unit())
          + " ± "
          + PowerOfTen.show(digits.round(percent(result, rounded)), sign)
          + " %";
    }

    /**
     * Of the numbers themselves, which have more digits than those that are printed; but of the
     * printed ones where rounding may well double a value that is smaller than its uncertainty.
     */
    private static BigDecimal percent(MeasurementResult result, Rounded printed) {
      boolean small = result.value().abs().compareTo(result.uncertainty()) < 0;
      BigDecimal value = small ? printed.value() : result.value();
      BigDecimal uncertainty = small ? printed.uncertainty() : result.uncertainty();
      return uncertainty.movePointRight(2).divide(value.abs(), MathContext.DECIMAL128);
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
    String writeInexact(MeasurementResult result, DigitsRule digits, DecimalSign sign) {
      Rounded rounded = result.rounded(digits);
      PowerOfTen power = PowerOfTen.of(rounded.value(), rounded.uncertainty());
      return bracketed(rounded, power, sign) + power + behind(result.unit());
    }
  };

  /** The key of the word that stands behind a value without uncertainty. */
  static final String EXACT = "result.exact";

  /**
   * Writes a result, both parts rounded to one place and with one power of ten if they need one. A
   * result without uncertainty is written in full and called exact.
   */
  public String write(MeasurementResult result, DigitsRule digits, Sentences sentences) {
    DecimalSign sign = sentences.decimalSign();
    return result.uncertainty().signum() == 0
        ? PowerOfTen.show(result.value(), sign) + behind(result.unit()) + " " + sentences.say(EXACT)
        : writeInexact(result, digits, sign);
  }

  /** Whether the style has a meaning for a result: a zero value has no percentage. */
  public boolean canWrite(MeasurementResult result, DigitsRule digits) {
    return true;
  }

  abstract String writeInexact(MeasurementResult result, DigitsRule digits, DecimalSign sign);

  private static String bracketed(Rounded rounded, PowerOfTen power, DecimalSign sign) {
    return "(" + bothParts(rounded, power, sign) + ")";
  }

  private static String bothParts(Rounded rounded, PowerOfTen power, DecimalSign sign) {
    return power.digits(rounded.value(), sign) + " ± " + power.digits(rounded.uncertainty(), sign);
  }

  private static String behind(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
