package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;

/** A function of two ranges of one size, taken in pairs; a pair that lacks a number is left out. */
enum Pairing implements Function {
  SLOPE {
    @Override
    <T> T of(Field<T> field, List<T> y, List<T> x) {
      requireTwo(x);
      List<T> dx = Statistic.deviations(field, x);
      List<T> dy = Statistic.deviations(field, y);
      return field.apply(
          Binary.DIVIDE,
          Statistic.SUM.of(field, CellByCell.multiplied(field, dx, dy)),
          Statistic.SUMSQ.of(field, dx));
    }
  },
  INTERCEPT {
    @Override
    <T> T of(Field<T> field, List<T> y, List<T> x) {
      T slope = SLOPE.of(field, y, x);
      return field.apply(
          Binary.SUBTRACT,
          Statistic.AVERAGE.of(field, y),
          field.apply(Binary.MULTIPLY, slope, Statistic.AVERAGE.of(field, x)));
    }
  };

  @Override
  public Arity arity() {
    return Arity.exactly(2);
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    List<List<Operand<T>>> aligned = evaluator.aligned(name(), arguments);
    List<T> first = new ArrayList<>();
    List<T> second = new ArrayList<>();
    for (int i = 0; i < aligned.get(0).size(); i++) {
      Operand<T> x = aligned.get(0).get(i);
      Operand<T> y = aligned.get(1).get(i);
      if (evaluator.isNumber(x) && evaluator.isNumber(y)) {
        first.add(evaluator.numberIn(x));
        second.add(evaluator.numberIn(y));
      }
    }
    return new Operand.Number<>(of(evaluator.field(), first, second));
  }

  /** The value for the pairs in which both are numbers. */
  abstract <T> T of(Field<T> field, List<T> first, List<T> second);

  <T> void requireTwo(List<T> pairs) {
    if (pairs.size() < 2) {
      throw FormulaException.of("formula.pairs", name());
    }
  }
}
