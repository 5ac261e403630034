package tenthmark.measurement.formula;

import java.util.List;

/** A number by its place among all numbers of a range. */
enum Ranking implements Function {
  /** The k-th from below. */
  SMALL {
    @Override
    double position(double k, int count) {
      return CalcArithmetic.floor(k) - 1;
    }
  },
  /** The k-th from above. */
  LARGE {
    @Override
    double position(double k, int count) {
      return count - CalcArithmetic.floor(k);
    }
  },
  /** That below which a part of the numbers lies, from 0 to 1. */
  PERCENTILE {
    @Override
    double position(double part, int count) {
      return part * (count - 1);
    }
  },
  /** The same by quarters, from 0 to 4. */
  QUARTILE {
    @Override
    double position(double quarters, int count) {
      return CalcArithmetic.floor(quarters) / 4 * (count - 1);
    }
  };

  abstract double position(double argument, int count);

  @Override
  public Arity arity() {
    return Arity.exactly(2);
  }

  @Override
  public boolean takesOne(int index) {
    return index == 1;
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    List<T> numbers = evaluator.numbers(arguments.subList(0, 1));
    double argument =
        evaluator
            .field()
            .fixed(evaluator.number(arguments.get(1)))
            .orElseThrow(() -> FormulaException.of("formula.position"));
    double position = position(argument, numbers.size());
    if (!(position >= 0 && position <= numbers.size() - 1)) {
      throw FormulaException.ofError(
          "formula.rank", name(), Trouble.shown(argument), numbers.size());
    }
    return new Operand.Number<>(
        evaluator.field().apply(new OrderStatistic(name(), position), numbers));
  }
}
