package tenthmark.measurement.formula;

import java.util.List;
import tenthmark.measurement.formula.Expression.Union;

/** How many cells hold something; one in error does no harm. */
enum Count implements Function {
  /** A number. */
  COUNT {
    @Override
    boolean counts(Operand<?> cell) {
      return cell instanceof Operand.Number;
    }
  },
  /** Anything. */
  COUNTA {
    @Override
    boolean counts(Operand<?> cell) {
      return !(cell instanceof Operand.Blank);
    }
  };

  abstract boolean counts(Operand<?> cell);

  @Override
  public Arity arity() {
    return Arity.atLeast(1);
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    long count = 0;
    for (Expression argument : arguments) {
      count += counted(evaluator, argument);
    }
    return new Operand.Number<>(evaluator.field().constant((double) count));
  }

  private <T> long counted(Evaluator<T> evaluator, Expression argument) {
    if (argument instanceof Expression.Omitted) {
      return 1;
    }
    if (argument instanceof Union union) {
      return union.parts().stream().mapToLong(part -> counted(evaluator, part)).sum();
    }
    return evaluator.blockOrFault(argument).rows().stream()
        .flatMap(List::stream)
        .filter(this::isCounted)
        .count();
  }

  /** A number without slope is one, and what the engine cannot follow may be one. */
  private boolean isCounted(Operand<?> cell) {
    if (cell instanceof Operand.Fault<?> fault && !fault.problem().isError()) {
      if (fault.problem().isOfSlope()) {
        return true;
      }
      throw fault.problem();
    }
    return counts(cell);
  }
}
