package tenthmark.measurement.formula;

import java.util.List;

/** How many of the arguments' cells hold a number; one in error does not, and does no harm. */
record Count() implements Function {

  private static final int MOST_ARGUMENTS = 255;

  @Override
  public String name() {
    return "COUNT";
  }

  @Override
  public int least() {
    return 1;
  }

  @Override
  public int most() {
    return MOST_ARGUMENTS;
  }

  @Override
  public <T> Operand<T> call(Evaluator<T> evaluator, List<Expression> arguments) {
    long count = 0;
    for (Expression argument : arguments) {
      count += numbersIn(evaluator, argument);
    }
    return new Operand.Number<>(evaluator.field().constant(count));
  }

  private static <T> long numbersIn(Evaluator<T> evaluator, Expression argument) {
    try {
      Operand<T> operand = evaluator.operand(argument);
      if (operand instanceof Operand.Block<T> block) {
        return block.rows().stream()
            .flatMap(List::stream)
            .filter(Operand.Number.class::isInstance)
            .count();
      }
      boolean omitted = argument instanceof Expression.Omitted;
      return omitted || operand instanceof Operand.Number ? 1 : 0;
    } catch (FormulaException error) {
      return 0;
    }
  }
}
