package tenthmark.measurement.formula;

import java.util.List;

/** A function of conditions, or one that has no arguments. */
enum Logic implements Function {
  IF(new Arity(2, 3)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      Expression otherwise = arguments.size() > 2 ? arguments.get(2) : new Expression.Constant(0);
      return evaluator
          .field()
          .choose(
              truth(evaluator, evaluator.number(arguments.get(0))),
              () -> evaluator.operand(arguments.get(1)),
              () -> evaluator.operand(otherwise));
    }
  },
  AND(Arity.atLeast(1)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return folded(evaluator, Binary.MIN, arguments);
    }
  },
  OR(Arity.atLeast(1)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return folded(evaluator, Binary.MAX, arguments);
    }
  },
  NOT(Arity.exactly(1)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      T zero = evaluator.field().constant(0);
      return new Operand.Number<>(
          evaluator.field().apply(Binary.EQUAL, evaluator.number(arguments.get(0)), zero));
    }
  },
  PI(Arity.exactly(0)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return new Operand.Number<>(evaluator.field().constant(Math.PI));
    }
  },
  TRUE(Arity.exactly(0)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return new Operand.Number<>(evaluator.field().constant(1));
    }
  },
  FALSE(Arity.exactly(0)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return new Operand.Number<>(evaluator.field().constant(0));
    }
  };

  private final Arity arity;

  Logic(Arity arity) {
    this.arity = arity;
  }

  @Override
  public Arity arity() {
    return arity;
  }

  private static <T> T truth(Evaluator<T> evaluator, T number) {
    return evaluator.field().apply(Binary.NOT_EQUAL, number, evaluator.field().constant(0));
  }

  <T> Operand<T> folded(Evaluator<T> evaluator, Binary function, List<Expression> arguments) {
    return new Operand.Number<>(
        evaluator.numbers(arguments).stream()
            .map(number -> truth(evaluator, number))
            .reduce((x, y) -> evaluator.field().apply(function, x, y))
            .orElseThrow(() -> FormulaException.of("formula.no.condition", name())));
  }
}
