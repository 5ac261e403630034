package tenthmark.measurement.formula;

import java.util.List;

/** How many of the arguments' cells hold a number; one in error does not, and does no harm. */
record Count() implements Function {

  @Override
  public String name() {
    return "COUNT";
  }

  @Override
  public Arity arity() {
    return Arity.atLeast(1);
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    long count = 0;
    for (Expression argument : arguments) {
      count += numbersIn(evaluator, argument);
    }
    return new Operand.Number<>(evaluator.field().constant((double) count));
  }

  private static <T> long numbersIn(Evaluator<T> evaluator, Expression argument) {
    if (argument instanceof Expression.Omitted) {
      return 1;
    }
    try {
      Operand<T> operand = evaluator.operand(argument);
      return operand instanceof Operand.Block<T> block
          ? block.rows().stream().flatMap(List::stream).filter(Count::isNumber).count()
          : isNumber(operand) ? 1 : 0;
    } catch (FormulaException problem) {
      return problem.isOfSlope() ? 1 : 0;
    }
  }

  private static boolean isNumber(Operand<?> cell) {
    return cell instanceof Operand.Number
        || (cell instanceof Operand.Fault<?> fault && fault.problem().isOfSlope());
  }
}
