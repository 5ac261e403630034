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
  },
  CORREL {
    @Override
    <T> T of(Field<T> field, List<T> x, List<T> y) {
      requireTwo(x);
      List<T> dx = Statistic.deviations(field, x);
      List<T> dy = Statistic.deviations(field, y);
      T squares =
          field.apply(
              Binary.MULTIPLY, Statistic.SUMSQ.of(field, dx), Statistic.SUMSQ.of(field, dy));
      return field.apply(
          Binary.DIVIDE,
          Statistic.SUM.of(field, CellByCell.multiplied(field, dx, dy)),
          field.apply(Unary.SQRT, squares));
    }
  },
  RSQ {
    @Override
    <T> T of(Field<T> field, List<T> y, List<T> x) {
      T correlation = CORREL.of(field, y, x);
      return field.apply(Binary.MULTIPLY, correlation, correlation);
    }
  },
  COVAR {
    @Override
    <T> T of(Field<T> field, List<T> x, List<T> y) {
      return Statistic.AVERAGE.of(
          field,
          CellByCell.multiplied(
              field, Statistic.deviations(field, x), Statistic.deviations(field, y)));
    }
  };

  @Override
  public Arity arity() {
    return Arity.exactly(2);
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    return new Operand.Number<>(of(evaluator, arguments));
  }

  <T> T of(Evaluator<T> evaluator, List<Expression> arguments) {
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
    return of(evaluator.field(), first, second);
  }

  /** The value for the pairs in which both are numbers. */
  abstract <T> T of(Field<T> field, List<T> first, List<T> second);

  <T> void requireTwo(List<T> pairs) {
    if (pairs.size() < 2) {
      throw FormulaException.ofError("formula.pairs", name());
    }
  }
}
