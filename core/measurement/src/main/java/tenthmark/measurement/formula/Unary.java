package tenthmark.measurement.formula;

import java.math.RoundingMode;
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
  SIN(x -> Math.sin(CalcArithmetic.angle(x)), Math::cos),
  COS(x -> Math.cos(CalcArithmetic.angle(x)), x -> -Math.sin(x)),
  TAN(x -> Math.tan(CalcArithmetic.angle(x)), x -> 1 / squared(Math.cos(x))),
  COT(x -> 1 / Math.tan(CalcArithmetic.angle(x)), x -> -1 / squared(Math.sin(x))),
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
  INT(CalcArithmetic::floor),
  ROUND(x -> CalcArithmetic.round(x, 0, RoundingMode.HALF_UP)),
  ROUNDUP(x -> CalcArithmetic.round(x, 0, RoundingMode.UP)),
  ROUNDDOWN(x -> CalcArithmetic.round(x, 0, RoundingMode.DOWN)),
  TRUNC(x -> CalcArithmetic.round(x, 0, RoundingMode.DOWN));

  private final DoubleUnaryOperator value;
  private final DoubleUnaryOperator slope;

  Unary(DoubleUnaryOperator value, DoubleUnaryOperator slope) {
    this.value = value;
    this.slope = slope;
  }

  /** Rounding has no slope anywhere: flat steps would make a real uncertainty vanish. */
  Unary(DoubleUnaryOperator value) {
    this(value, x -> Double.NaN);
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
