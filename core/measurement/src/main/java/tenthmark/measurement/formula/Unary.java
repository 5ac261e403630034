package tenthmark.measurement.formula;

import java.util.function.DoubleUnaryOperator;

/**
 * A function of one number: its value and its slope. A value or slope that does not exist is NaN or
 * infinite.
 */
public enum Unary {
  ABS(Math::abs, x -> x == 0 ? Double.NaN : Math.signum(x)),
  SIGN(Math::signum, x -> x == 0 ? Double.NaN : 0),
  SQRT(Math::sqrt, x -> 0.5 / Math.sqrt(x)),
  EXP(Math::exp, Math::exp),
  LN(Math::log, x -> 1 / x),
  LOG10(Math::log10, x -> 1 / (x * Math.log(10))),
  SIN(Math::sin, Math::cos),
  COS(Math::cos, x -> -Math.sin(x)),
  TAN(Math::tan, x -> 1 / squared(Math.cos(x))),
  COT(x -> 1 / Math.tan(x), x -> -1 / squared(Math.sin(x))),
  ASIN(Math::asin, x -> 1 / Math.sqrt((1 - x) * (1 + x))),
  ACOS(Math::acos, x -> -1 / Math.sqrt((1 - x) * (1 + x))),
  ATAN(Math::atan, x -> 1 / (1 + x * x)),
  SINH(Math::sinh, Math::cosh),
  COSH(Math::cosh, Math::sinh),
  TANH(Math::tanh, x -> 1 / squared(Math.cosh(x))),
  ASINH(Unary::asinh, x -> 1 / Math.hypot(1, x)),
  ACOSH(Unary::acosh, x -> 1 / Math.sqrt((x - 1) * (x + 1))),
  ATANH(x -> 0.5 * (Math.log1p(x) - Math.log1p(-x)), x -> 1 / ((1 - x) * (1 + x))),
  RADIANS(Math::toRadians, x -> Math.PI / 180),
  DEGREES(Math::toDegrees, x -> 180 / Math.PI),
  INT(CalcArithmetic::floor, x -> Double.NaN);

  private final DoubleUnaryOperator value;
  private final DoubleUnaryOperator slope;

  Unary(DoubleUnaryOperator value, DoubleUnaryOperator slope) {
    this.value = value;
    this.slope = slope;
  }

  double value(double x) {
    return value.applyAsDouble(x);
  }

  double slope(double x) {
    return slope.applyAsDouble(x);
  }

  String shown(double x) {
    return name() + "(" + Trouble.shown(x) + ")";
  }

  private static double squared(double x) {
    return x * x;
  }

  private static double asinh(double x) {
    double size = Math.abs(x);
    return Math.copySign(Math.log1p(size + size * size / (1 + Math.hypot(1, size))), x);
  }

  private static double acosh(double x) {
    double above = x - 1;
    return Math.log1p(above + Math.sqrt(above * (x + 1)));
  }
}
