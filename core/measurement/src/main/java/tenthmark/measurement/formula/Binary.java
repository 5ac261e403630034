package tenthmark.measurement.formula;

import java.math.RoundingMode;
import java.util.function.DoubleBinaryOperator;

/**
 * An operator or a function of two numbers: its value and its slope along each. A value or slope
 * that does not exist is NaN or infinite.
 */
public enum Binary {
  ADD("+", CalcArithmetic::add, (x, y) -> 1, (x, y) -> 1),
  SUBTRACT("-", CalcArithmetic::subtract, (x, y) -> 1, (x, y) -> -1),
  MULTIPLY("*", (x, y) -> x * y, (x, y) -> y, (x, y) -> x),
  DIVIDE("/", (x, y) -> x / y, (x, y) -> 1 / y, (x, y) -> -x / y / y),
  POWER("^", CalcArithmetic::power, Binary::slopeAlongBase, Binary::slopeAlongExponent),
  EQUAL("=", (x, y) -> CalcArithmetic.equal(x, y)),
  NOT_EQUAL("<>", (x, y) -> !CalcArithmetic.equal(x, y)),
  LESS("<", (x, y) -> x < y && !CalcArithmetic.equal(x, y)),
  LESS_OR_EQUAL("<=", (x, y) -> x < y || CalcArithmetic.equal(x, y)),
  GREATER(">", (x, y) -> x > y && !CalcArithmetic.equal(x, y)),
  GREATER_OR_EQUAL(">=", (x, y) -> x > y || CalcArithmetic.equal(x, y)),
  MIN("", Math::min, (x, y) -> chosen(y - x), (x, y) -> chosen(x - y)),
  MAX("", Math::max, (x, y) -> chosen(x - y), (x, y) -> chosen(y - x)),
  ATAN2("", Binary::angle, (x, y) -> -y / (x * x + y * y), (x, y) -> x / (x * x + y * y)),
  LOG(
      "",
      Binary::logarithm,
      (x, base) -> 1 / (x * Math.log(base)),
      (x, base) -> -Math.log(x) / (base * Math.log(base) * Math.log(base))),
  MOD(
      "",
      CalcArithmetic::modulo,
      (x, y) -> CalcArithmetic.modulo(x, y) == 0 ? Double.NaN : 1,
      (x, y) -> CalcArithmetic.modulo(x, y) == 0 ? Double.NaN : -CalcArithmetic.floor(x / y)),
  ROUND((x, places) -> CalcArithmetic.round(x, places, RoundingMode.HALF_UP)),
  ROUNDUP((x, places) -> CalcArithmetic.roundToward(x, places, RoundingMode.UP)),
  ROUNDDOWN((x, places) -> CalcArithmetic.roundToward(x, places, RoundingMode.DOWN)),
  TRUNC((x, places) -> CalcArithmetic.roundToward(x, places, RoundingMode.DOWN));

  private final String operator;
  private final DoubleBinaryOperator value;
  private final DoubleBinaryOperator slopeAlongFirst;
  private final DoubleBinaryOperator slopeAlongSecond;
  private final boolean comparison;

  Binary(
      String operator,
      DoubleBinaryOperator value,
      DoubleBinaryOperator slopeAlongFirst,
      DoubleBinaryOperator slopeAlongSecond) {
    this(operator, value, slopeAlongFirst, slopeAlongSecond, false);
  }

  Binary(
      String operator,
      DoubleBinaryOperator value,
      DoubleBinaryOperator slopeAlongFirst,
      DoubleBinaryOperator slopeAlongSecond,
      boolean comparison) {
    this.operator = operator;
    this.value = value;
    this.slopeAlongFirst = slopeAlongFirst;
    this.slopeAlongSecond = slopeAlongSecond;
    this.comparison = comparison;
  }

  /** A comparison is flat on either side and has no slope where its sides are equal. */
  Binary(String operator, Comparison comparison) {
    this(
        operator,
        (x, y) -> Double.isNaN(x + y) ? Double.NaN : comparison.holds(x, y) ? 1 : 0,
        Binary::flatUnlessEqual,
        Binary::flatUnlessEqual,
        true);
  }

  /** Rounding has no slope anywhere: flat steps would make a real uncertainty vanish. */
  Binary(DoubleBinaryOperator value) {
    this("", value, (x, places) -> Double.NaN, (x, places) -> Double.NaN);
  }

  double value(double x, double y) {
    return value.applyAsDouble(x, y);
  }

  double slopeAlongFirst(double x, double y) {
    return slopeAlongFirst.applyAsDouble(x, y);
  }

  double slopeAlongSecond(double x, double y) {
    return slopeAlongSecond.applyAsDouble(x, y);
  }

  /** Whether the value is true (1) or false (0). */
  boolean isComparison() {
    return comparison;
  }

  /** The sign between the operands; empty for a function. */
  String operator() {
    return operator;
  }

  String shown(double x, double y) {
    return operator.isEmpty()
        ? name() + "(" + Trouble.shown(x) + "; " + Trouble.shown(y) + ")"
        : operand(x) + operator + operand(y);
  }

  private static String operand(double x) {
    return x < 0 ? "(" + Trouble.shown(x) + ")" : Trouble.shown(x);
  }

  private interface Comparison {
    boolean holds(double x, double y);
  }

  private static double slopeAlongBase(double base, double exponent) {
    if (base != 0) {
      return exponent * CalcArithmetic.power(base, exponent) / base;
    }
    return exponent == 0 ? 0 : exponent * Math.pow(0, exponent - 1);
  }

  private static double slopeAlongExponent(double base, double exponent) {
    return base == 0 && exponent > 0 ? 0 : Math.pow(base, exponent) * Math.log(base);
  }

  private static double logarithm(double x, double base) {
    if (base <= 0 || base == 1) {
      return Double.NaN;
    }
    return base == 10 ? Math.log10(x) : Math.log(x) / Math.log(base);
  }

  private static double chosen(double lead) {
    return lead == 0 ? Double.NaN : lead > 0 ? 1 : 0;
  }

  private static double flatUnlessEqual(double x, double y) {
    return CalcArithmetic.equal(x, y) ? Double.NaN : 0;
  }

  private static double angle(double x, double y) {
    return x == 0 && y == 0 ? Double.NaN : Math.atan2(y, x);
  }
}
