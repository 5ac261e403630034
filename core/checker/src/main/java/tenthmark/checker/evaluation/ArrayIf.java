package tenthmark.checker.evaluation;

import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.MissingArgEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;

/**
 * IF of an array formula: one condition chooses a whole argument, a table of conditions chooses
 * cell by cell. POI gives every result the size of the second argument.
 */
final class ArrayIf implements FreeRefFunction {

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    if (arguments.length < 2 || arguments.length > 3) {
      return ErrorEval.VALUE_INVALID;
    }
    ArrayArguments cells = ArrayArguments.of(arguments);
    if (cells.isSingle(0)) {
      return chosen(cells.at(0, 0, 0), arguments);
    }
    return cells.results(
        context,
        (row, column) ->
            ArrayArguments.element(chosen(cells.at(0, row, column), arguments), row, column));
  }

  private static ValueEval chosen(ValueEval condition, ValueEval[] arguments) {
    try {
      Boolean truth = OperandResolver.coerceValueToBoolean(condition, false);
      int index = truth != null && truth ? 1 : 2;
      ValueEval chosen = index < arguments.length ? arguments[index] : BoolEval.FALSE;
      return chosen instanceof MissingArgEval ? NumberEval.ZERO : chosen;
    } catch (EvaluationException error) {
      return error.getErrorEval();
    }
  }
}
