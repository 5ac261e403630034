package tenthmark.measurement.formula;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import tenthmark.measurement.wording.Message;

/** Plain values. */
public final class Doubles implements Field<Double> {

  @Override
  public Double constant(double value) {
    return value;
  }

  @Override
  public Double apply(Unary function, Double x) {
    double value = function.value(x);
    if (!Double.isFinite(value)) {
      throw Trouble.undefined(function.shown(x), value);
    }
    return value;
  }

  @Override
  public Double apply(Binary function, Double x, Double y) {
    if (function == Binary.DIVIDE && y == 0) {
      throw FormulaException.ofError("formula.division", new Message.Figure(function.shown(x, y)));
    }
    double value = function.value(x, y);
    if (!Double.isFinite(value)) {
      throw Trouble.undefined(function.shown(x, y), value);
    }
    return value;
  }

  @Override
  public Double apply(Aggregate function, List<Double> numbers) {
    double value = function.value(numbers.stream().mapToDouble(Double::doubleValue).toArray());
    if (!Double.isFinite(value)) {
      throw Trouble.undefined(function.name(), value);
    }
    return value;
  }

  @Override
  public OptionalDouble fixed(Double number) {
    return OptionalDouble.of(number);
  }

  @Override
  public Operand<Double> choose(
      Double condition, Supplier<Operand<Double>> yes, Supplier<Operand<Double>> no) {
    return condition != 0 ? yes.get() : no.get();
  }
}
