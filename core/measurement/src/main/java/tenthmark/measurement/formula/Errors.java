package tenthmark.measurement.formula;

import java.util.List;
import java.util.function.Predicate;

/** A function that deals with errors, or tells what a value is. */
enum Errors implements Function {
  /** The value, or another one where it is an error. */
  IFERROR(2) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return dealt(evaluator, arguments, FormulaException::isError);
    }
  },
  IFNA(2) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return dealt(evaluator, arguments, FormulaException::isNotAvailable);
    }
  },
  ISERROR(1) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return told(evaluator, arguments, Operand.Fault.class);
    }
  },
  ISNUMBER(1) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return told(evaluator, arguments, Operand.Number.class);
    }
  },
  ISTEXT(1) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return told(evaluator, arguments, Operand.Text.class);
    }
  },
  ISBLANK(1) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      return told(evaluator, arguments, Operand.Blank.class);
    }
  },
  /** The error that says that something is not available. */
  NA(0) {
    @Override
    public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
      throw FormulaException.notAvailable("formula.error", "#N/A");
    }
  };

  private final int arguments;

  Errors(int arguments) {
    this.arguments = arguments;
  }

  @Override
  public Arity arity() {
    return Arity.exactly(arguments);
  }

  @Override
  public boolean takesOne(int index) {
    return true;
  }

  private static <T> Operand<T> dealt(
      Evaluator<T> evaluator, List<Expression> arguments, Predicate<FormulaException> dealtWith) {
    Operand<T> value = valueOrFault(evaluator, arguments.get(0));
    if (value instanceof Operand.Fault<T> fault) {
      if (dealtWith.test(fault.problem())) {
        return evaluator.operand(arguments.get(1));
      }
      throw fault.problem();
    }
    return value instanceof Operand.Number<T> number
        ? evaluator
            .field()
            .whereUndefined(number.value(), () -> evaluator.operand(arguments.get(1)))
        : value;
  }

  /** Only errors that the document shows too; that the engine cannot follow is no error there. */
  private static <T> Operand<T> told(
      Evaluator<T> evaluator, List<Expression> arguments, Class<?> kind) {
    Operand<T> value = valueOrFault(evaluator, arguments.get(0));
    if (value instanceof Operand.Block) {
      throw FormulaException.of("formula.range");
    }
    if (value instanceof Operand.Fault<T> fault && !fault.problem().isError()) {
      throw fault.problem();
    }
    return new Operand.Number<>(evaluator.field().constant(kind.isInstance(value) ? 1 : 0));
  }

  static <T> Operand<T> valueOrFault(Evaluator<T> evaluator, Expression expression) {
    try {
      return evaluator.operand(expression);
    } catch (FormulaException problem) {
      return new Operand.Fault<>(problem);
    }
  }
}
