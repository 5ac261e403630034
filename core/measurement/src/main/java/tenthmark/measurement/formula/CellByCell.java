package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;

/** A sum over ranges of one size in which every place counts; a blank cell is 0. */
enum CellByCell implements Function {
  /** The products; a text is 0. */
  SUMPRODUCT(Arity.atLeast(1)) {
    @Override
    <T> List<T> terms(Evaluator<T> evaluator, List<List<Operand<T>>> ranges) {
      return ranges.stream()
          .map(cells -> cells.stream().map(cell -> orZero(evaluator, cell)).toList())
          .reduce((x, y) -> multiplied(evaluator.field(), x, y))
          .orElseThrow();
    }
  },
  /** The squared differences; a text is refused. */
  SUMXMY2(Arity.exactly(2)) {
    @Override
    <T> List<T> terms(Evaluator<T> evaluator, List<List<Operand<T>>> ranges) {
      List<T> gaps = new ArrayList<>();
      for (int i = 0; i < ranges.get(0).size(); i++) {
        T x = evaluator.numberIn(ranges.get(0).get(i));
        T y = evaluator.numberIn(ranges.get(1).get(i));
        gaps.add(evaluator.field().apply(Binary.SUBTRACT, x, y));
      }
      return multiplied(evaluator.field(), gaps, gaps);
    }
  };

  private final Arity arity;

  CellByCell(Arity arity) {
    this.arity = arity;
  }

  abstract <T> List<T> terms(Evaluator<T> evaluator, List<List<Operand<T>>> ranges);

  @Override
  public Arity arity() {
    return arity;
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    return new Operand.Number<>(
        Statistic.SUM.of(
            evaluator.field(), terms(evaluator, evaluator.aligned(name(), arguments))));
  }

  private static <T> T orZero(Evaluator<T> evaluator, Operand<T> cell) {
    return evaluator.isNumber(cell) ? evaluator.numberIn(cell) : evaluator.field().constant(0);
  }

  /** The products pair by pair. */
  static <T> List<T> multiplied(Field<T> field, List<T> x, List<T> y) {
    List<T> products = new ArrayList<>();
    for (int i = 0; i < x.size(); i++) {
      products.add(field.apply(Binary.MULTIPLY, x.get(i), y.get(i)));
    }
    return products;
  }
}
