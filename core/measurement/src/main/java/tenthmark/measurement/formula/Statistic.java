package tenthmark.measurement.formula;

import java.util.List;

/** A function of all numbers in its arguments, however they are grouped. */
enum Statistic implements Function {
  SUM(0) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(Aggregate.SUM, numbers);
    }
  },
  SUMSQ(0) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return SUM.of(field, CellByCell.multiplied(field, numbers, numbers));
    }
  },
  PRODUCT(0) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return folded(field, Binary.MULTIPLY, numbers);
    }
  },
  MIN(0) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return folded(field, Binary.MIN, numbers);
    }
  },
  MAX(0) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return folded(field, Binary.MAX, numbers);
    }
  },
  AVERAGE(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(Binary.DIVIDE, SUM.of(field, numbers), field.constant(numbers.size()));
    }
  },
  MEDIAN(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(new OrderStatistic("MEDIAN", (numbers.size() - 1) / 2.0), numbers);
    }
  },
  DEVSQ(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return SUMSQ.of(field, deviations(field, numbers));
    }
  },
  VAR(2) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(
          Binary.DIVIDE, DEVSQ.of(field, numbers), field.constant(numbers.size() - 1));
    }
  },
  VARP(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(Binary.DIVIDE, DEVSQ.of(field, numbers), field.constant(numbers.size()));
    }
  },
  STDEV(2) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(Unary.SQRT, VAR.of(field, numbers));
    }
  },
  STDEVP(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(Unary.SQRT, VARP.of(field, numbers));
    }
  },
  AVEDEV(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return AVERAGE.of(field, mapped(field, Unary.ABS, deviations(field, numbers)));
    }
  },
  GEOMEAN(1) {
    @Override
    <T> T of(Field<T> field, List<T> numbers) {
      return field.apply(Unary.EXP, AVERAGE.of(field, mapped(field, Unary.LN, numbers)));
    }
  };

  private final int leastNumbers;

  Statistic(int leastNumbers) {
    this.leastNumbers = leastNumbers;
  }

  abstract <T> T of(Field<T> field, List<T> numbers);

  @Override
  public Arity arity() {
    return Arity.atLeast(1);
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    List<T> numbers = evaluator.numbers(arguments);
    if (numbers.size() < leastNumbers) {
      throw FormulaException.ofError("formula.statistic.few", name(), numbers.size());
    }
    return new Operand.Number<>(of(evaluator.field(), numbers));
  }

  /** The differences from the mean. */
  static <T> List<T> deviations(Field<T> field, List<T> numbers) {
    T mean = AVERAGE.of(field, numbers);
    return numbers.stream().map(x -> field.apply(Binary.SUBTRACT, x, mean)).toList();
  }

  private static <T> List<T> mapped(Field<T> field, Unary function, List<T> numbers) {
    return numbers.stream().map(x -> field.apply(function, x)).toList();
  }

  private static <T> T folded(Field<T> field, Binary function, List<T> numbers) {
    return numbers.stream()
        .reduce((x, y) -> field.apply(function, x, y))
        .orElseGet(() -> field.constant(0));
  }
}
