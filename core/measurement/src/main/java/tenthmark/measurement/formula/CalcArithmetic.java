package tenthmark.measurement.formula;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Arithmetic where Calc's own differs from IEEE 754: two numbers that agree to 48 bits are equal,
 * so that their difference is 0, and rounding first goes to 15 decimal digits. Measured in
 * LibreOffice 7.4; without it the engine would not agree with the cell beside it.
 */
final class CalcArithmetic {

  private static final double EQUAL_WITHIN = 0x1p-48;
  private static final double LARGEST_EXACT_INTEGER = 0x1p53;
  private static final double LARGEST_ROUNDED = 0x1p40;
  private static final double SMALLEST_POWER = 0x1p-1022;
  private static final double LARGEST_ANGLE = 0x1p64;
  private static final MathContext FIFTEEN_DIGITS = new MathContext(15, RoundingMode.HALF_UP);
  private static final MathContext TWELVE_DIGITS = new MathContext(12, RoundingMode.HALF_UP);
  private static final int TWELVE_PLACES = 12;
  private static final int MOST_PLACES = 400;

  private CalcArithmetic() {}

  static boolean equal(double x, double y) {
    if (x == y) {
      return true;
    }
    double gap = Math.abs(x - y);
    return gap < Math.abs(x) * EQUAL_WITHIN
        && gap < Math.abs(y) * EQUAL_WITHIN
        && !(isExactInteger(x) && isExactInteger(y));
  }

  static double add(double x, double y) {
    return x * y < 0 && equal(x, -y) ? 0 : x + y;
  }

  static double subtract(double x, double y) {
    return equal(x, y) ? 0 : x - y;
  }

  /**
   * The odd root of a negative number is real in Calc: (-8)^(1/3) is -2. A power too small for a
   * double with all its digits is an error there, not 0.
   */
  static double power(double base, double exponent) {
    double power = rawPower(base, exponent);
    return Math.abs(power) < SMALLEST_POWER && base != 0 ? Double.NaN : power;
  }

  private static double rawPower(double base, double exponent) {
    if (exponent == 2) {
      return base * base;
    }
    return base < 0 && exponent != Math.rint(exponent)
        ? oddRoot(base, exponent)
        : Math.pow(base, exponent);
  }

  private static double oddRoot(double base, double exponent) {
    double root = Math.rint(1 / exponent);
    return root % 2 != 0 && equal(1 / root, exponent) ? -Math.pow(-base, exponent) : Double.NaN;
  }

  static double modulo(double x, double y) {
    return y == 0 ? Double.NaN : subtract(x, floor(x / y) * y);
  }

  /** The next whole number below; a number whose first 15 digits are whole counts as whole. */
  static double floor(double x) {
    return x == Math.rint(x) || Math.abs(x) > LARGEST_ROUNDED
        ? Math.floor(x)
        : round(x, 0, RoundingMode.FLOOR);
  }

  /** Rounds to a number of decimal places, negative ones counting to the left of the point. */
  static double round(double x, double places, RoundingMode mode) {
    return round(x, places, mode, FIFTEEN_DIGITS);
  }

  /**
   * Rounds up or down to a given number of places: of a number with decimals only 12 digits count,
   * unless 12 places or more are asked for.
   */
  static double roundToward(double x, double places, RoundingMode mode) {
    boolean few = places < TWELVE_PLACES && x != Math.rint(x);
    return round(x, places, mode, few ? TWELVE_DIGITS : FIFTEEN_DIGITS);
  }

  private static double round(double x, double places, RoundingMode mode, MathContext digits) {
    if (!Double.isFinite(x) || Math.abs(places) > MOST_PLACES) {
      return Double.NaN;
    }
    double rounded = new BigDecimal(x).round(digits).setScale((int) places, mode).doubleValue();
    return Math.copySign(rounded, x);
  }

  /** An angle; beyond 2^64 Calc refuses to take its sine. */
  static double angle(double radians) {
    return Math.abs(radians) < LARGEST_ANGLE ? radians : Double.NaN;
  }

  /**
   * The sum with the rounding error of each step carried along (Neumaier, Z. Angew. Math. Mech. 54
   * (1974) 39), the last number added last and approximately, as Calc does.
   */
  static double sum(double[] numbers) {
    double sum = 0;
    double error = 0;
    double last = 0;
    for (double number : numbers) {
      if (number != 0) {
        double next = sum + last;
        error += Math.abs(sum) >= Math.abs(last) ? sum - next + last : last - next + sum;
        sum = next;
        last = number;
      }
    }
    double total = sum + error;
    if (total * last < 0 && equal(total, -last)) {
      return 0;
    }
    double next = sum + last;
    error += Math.abs(sum) >= Math.abs(last) ? sum - next + last : last - next + sum;
    return next + error;
  }

  private static boolean isExactInteger(double x) {
    return x == Math.rint(x) && Math.abs(x) <= LARGEST_EXACT_INTEGER;
  }
}
