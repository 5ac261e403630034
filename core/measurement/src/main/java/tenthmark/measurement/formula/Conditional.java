package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;

/** A sum, a number or a mean of those cells that fulfil conditions. */
enum Conditional implements Function {
  SUMIF(new Arity(2, 3), false) {
    @Override
    <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
      return new Operand.Number<>(Statistic.SUM.of(evaluator.field(), chosen));
    }
  },
  COUNTIF(Arity.exactly(2), false) {
    @Override
    <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
      return new Operand.Number<>(Statistic.SUM.of(evaluator.field(), counted));
    }
  },
  AVERAGEIF(new Arity(2, 3), false) {
    @Override
    <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
      return mean(evaluator, counted, chosen);
    }
  },
  SUMIFS(Arity.atLeast(3), true) {
    @Override
    <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
      return SUMIF.of(evaluator, counted, chosen);
    }
  },
  COUNTIFS(Arity.atLeast(2), true) {
    @Override
    <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
      return COUNTIF.of(evaluator, counted, chosen);
    }
  },
  AVERAGEIFS(Arity.atLeast(3), true) {
    @Override
    <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
      return mean(evaluator, counted, chosen);
    }
  };

  private final Arity arity;
  private final boolean several;

  /**
   * A function.
   *
   * @param several whether it takes any number of pairs of a range and a condition
   */
  Conditional(Arity arity, boolean several) {
    this.arity = arity;
    this.several = several;
  }

  /**
   * The result.
   *
   * @param counted 1 for each number that fulfils the conditions, and 0 for each other one
   * @param chosen the numbers that do, and 0 for each other one
   */
  abstract <T> Operand<T> of(Evaluator<T> evaluator, List<T> counted, List<T> chosen);

  @Override
  public Arity arity() {
    return arity;
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    boolean counts = this == COUNTIF || this == COUNTIFS;
    Expression summed =
        counts || several || arguments.size() < 3 ? arguments.get(0) : arguments.get(2);
    List<Expression> pairs =
        several ? arguments.subList(counts ? 0 : 1, arguments.size()) : arguments.subList(0, 2);
    if (pairs.size() % 2 != 0) {
      throw FormulaException.of("formula.arguments.pairs", name());
    }
    List<Expression> ranges = new ArrayList<>(List.of(summed));
    List<Criterion<T>> criteria = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i += 2) {
      ranges.add(pairs.get(i));
      criteria.add(Criterion.of(evaluator, pairs.get(i + 1)));
    }
    return chosen(evaluator, evaluator.aligned(name(), ranges), criteria, counts);
  }

  private <T> Operand<T> chosen(
      Evaluator<T> evaluator,
      List<List<Operand<T>>> ranges,
      List<Criterion<T>> criteria,
      boolean counts) {
    Field<T> field = evaluator.field();
    List<T> counted = new ArrayList<>();
    List<T> chosen = new ArrayList<>();
    for (int cell = 0; cell < ranges.get(0).size(); cell++) {
      T truth = field.constant(1);
      for (int i = 0; i < criteria.size(); i++) {
        T one = criteria.get(i).truth(evaluator, ranges.get(i + 1).get(cell));
        truth = field.apply(Binary.MULTIPLY, truth, one);
      }
      Operand<T> summed = ranges.get(0).get(cell);
      if (counts) {
        counted.add(truth);
      } else if (field.fixed(truth).orElse(1) != 0 && evaluator.isNumber(summed)) {
        counted.add(truth);
        chosen.add(field.apply(Binary.MULTIPLY, truth, evaluator.numberIn(summed)));
      }
    }
    return of(evaluator, counted, chosen);
  }

  private static <T> Operand<T> mean(Evaluator<T> evaluator, List<T> counted, List<T> chosen) {
    Field<T> field = evaluator.field();
    return new Operand.Number<>(
        field.apply(
            Binary.DIVIDE, Statistic.SUM.of(field, chosen), Statistic.SUM.of(field, counted)));
  }
}
