package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

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

    @Override
    public boolean takesOne(int index) {
      return true;
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

    @Override
    public boolean takesOne(int index) {
      return true;
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
  },

  /** The value behind the first condition that holds. */
  IFS(Arity.atLeast(2)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      requirePairs(arguments);
      List<Supplier<T>> conditions = new ArrayList<>();
      List<Supplier<Operand<T>>> values = new ArrayList<>();
      for (int i = 0; i < arguments.size(); i += 2) {
        Expression condition = arguments.get(i);
        Expression value = arguments.get(i + 1);
        conditions.add(() -> truth(evaluator, evaluator.number(condition)));
        values.add(() -> evaluator.operand(value));
      }
      return evaluator.firstWhere(
          conditions,
          values,
          () -> {
            throw FormulaException.notAvailable("formula.none.holds", name());
          });
    }

    @Override
    public boolean takesOne(int index) {
      return true;
    }
  },
  /** The value behind the first number or text that equals the first argument. */
  SWITCH(Arity.atLeast(3)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      Operand<T> wanted = evaluator.operand(arguments.get(0));
      List<Supplier<T>> conditions = new ArrayList<>();
      List<Supplier<Operand<T>>> values = new ArrayList<>();
      for (int i = 1; i + 1 < arguments.size(); i += 2) {
        Expression candidate = arguments.get(i);
        Expression value = arguments.get(i + 1);
        conditions.add(
            () -> evaluator.compared(Binary.EQUAL, wanted, evaluator.operand(candidate)));
        values.add(() -> evaluator.operand(value));
      }
      return evaluator.firstWhere(
          conditions,
          values,
          () -> {
            if (arguments.size() % 2 == 0) {
              return evaluator.operand(arguments.get(arguments.size() - 1));
            }
            throw FormulaException.notAvailable("formula.none.holds", name());
          });
    }

    @Override
    public boolean takesOne(int index) {
      return true;
    }
  },
  /** The value whose number the first argument gives. */
  CHOOSE(Arity.atLeast(2)) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return evaluator.at(
          evaluator.number(arguments.get(0)),
          arguments.size() - 1,
          index -> evaluator.operand(arguments.get(index + 1)));
    }

    @Override
    public boolean takesOne(int index) {
      return true;
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

  void requirePairs(List<Expression> arguments) {
    if (arguments.size() % 2 != 0) {
      throw FormulaException.of("formula.arguments.pairs", name());
    }
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
