package tenthmark.measurement.formula;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.hipparchus.analysis.differentiation.Gradient;

/** The second opinion on slopes: Hipparchus, whose rules of differentiation are not ours. */
final class Gradients implements Field<Gradient> {

  private final int inputs;

  Gradients(int inputs) {
    this.inputs = inputs;
  }

  Gradient input(int index, double value) {
    return Gradient.variable(inputs, index, value);
  }

  @Override
  public Gradient constant(double value) {
    return Gradient.constant(inputs, value);
  }

  @Override
  public Gradient apply(Unary function, Gradient x) {
    return defined(function.name(), applied(function, x));
  }

  private static Gradient defined(String step, Gradient value) {
    if (!Double.isFinite(value.getValue())) {
      throw Trouble.undefined(step, value.getValue());
    }
    return value;
  }

  private static Gradient applied(Unary function, Gradient x) {
    return switch (function) {
      case ABS -> x.abs();
      case SIGN -> x.sign();
      case SQRT -> x.sqrt();
      case EXP -> x.exp();
      case LN -> x.log();
      case LOG10 -> x.log10();
      case SIN -> x.sin();
      case COS -> x.cos();
      case TAN -> x.tan();
      case COT -> x.tan().reciprocal();
      case ASIN -> x.asin();
      case ACOS -> x.acos();
      case ATAN -> x.atan();
      case SINH -> x.sinh();
      case COSH -> x.cosh();
      case TANH -> x.tanh();
      case ASINH -> x.asinh();
      case ACOSH -> x.acosh();
      case ATANH -> x.atanh();
      case RADIANS -> x.toRadians();
      case DEGREES -> x.toDegrees();
      case INT, ROUND, ROUNDUP, ROUNDDOWN, TRUNC -> throw new UnsupportedOperationException();
    };
  }

  @Override
  public Gradient apply(Binary function, Gradient x, Gradient y) {
    return defined(function.name(), applied(function, x, y));
  }

  private Gradient applied(Binary function, Gradient x, Gradient y) {
    return switch (function) {
      case ADD -> x.add(y);
      case SUBTRACT -> x.subtract(y);
      case MULTIPLY -> x.multiply(y);
      case DIVIDE -> x.divide(y);
      case POWER -> isConstant(y) ? x.pow(y.getValue()) : x.pow(y);
      case MIN -> x.getValue() < y.getValue() ? x : y;
      case MAX -> x.getValue() > y.getValue() ? x : y;
      case ATAN2 -> y.atan2(x);
      case LOG -> x.log().divide(y.log());
      case EQUAL, NOT_EQUAL, LESS, LESS_OR_EQUAL, GREATER, GREATER_OR_EQUAL ->
          constant(function.value(x.getValue(), y.getValue()));
      case MOD, ROUND, ROUNDUP, ROUNDDOWN, TRUNC -> throw new UnsupportedOperationException();
    };
  }

  private boolean isConstant(Gradient x) {
    for (double slope : x.getGradient()) {
      if (slope != 0) {
        return false;
      }
    }
    return true;
  }

  @Override
  public Gradient apply(Aggregate function, List<Gradient> numbers) {
    if (function == Aggregate.SUM) {
      return numbers.stream().reduce(constant(0), Gradient::add);
    }
    double position = ((OrderStatistic) function).position();
    List<Gradient> sorted =
        numbers.stream().sorted((x, y) -> Double.compare(x.getValue(), y.getValue())).toList();
    Gradient lower = sorted.get((int) position);
    Gradient upper = sorted.get((int) Math.ceil(position));
    return lower.add(upper.subtract(lower).multiply(position - (int) position));
  }

  @Override
  public OptionalDouble fixed(Gradient number) {
    return isConstant(number) ? OptionalDouble.of(number.getValue()) : OptionalDouble.empty();
  }

  @Override
  public Operand<Gradient> choose(
      Gradient condition, Supplier<Operand<Gradient>> yes, Supplier<Operand<Gradient>> no) {
    return condition.getValue() != 0 ? yes.get() : no.get();
  }
}
