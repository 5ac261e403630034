package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.function.ToIntFunction;
import org.apache.poi.ss.formula.CacheAreaEval;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.TwoDEval;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.MissingArgEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.eval.RefEval;
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
    if (isSingle(arguments[0])) {
      return chosen(element(arguments[0], 0, 0), arguments);
    }
    int height = size(arguments, TwoDEval::getHeight);
    int width = size(arguments, TwoDEval::getWidth);
    ValueEval[] cells = new ValueEval[height * width];
    for (int i = 0; i < cells.length; i++) {
      int row = i / width;
      int column = i % width;
      cells[i] = element(chosen(element(arguments[0], row, column), arguments), row, column);
    }
    int top = context.getRowIndex();
    int left = context.getColumnIndex();
    return new CacheAreaEval(top, left, top + height - 1, left + width - 1, cells);
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

  private static int size(ValueEval[] arguments, ToIntFunction<TwoDEval> side) {
    return Arrays.stream(arguments)
        .mapToInt(argument -> argument instanceof TwoDEval area ? side.applyAsInt(area) : 1)
        .max()
        .orElseThrow();
  }

  private static boolean isSingle(ValueEval argument) {
    return !(argument instanceof TwoDEval area) || area.getHeight() * area.getWidth() == 1;
  }

  /** The cell of an argument; a single row, column or value repeats itself. */
  private static ValueEval element(ValueEval argument, int row, int column) {
    if (argument instanceof RefEval reference) {
      return reference.getInnerValueEval(reference.getFirstSheetIndex());
    }
    if (!(argument instanceof TwoDEval area)) {
      return argument;
    }
    int down = area.getHeight() == 1 ? 0 : row;
    int across = area.getWidth() == 1 ? 0 : column;
    return down < area.getHeight() && across < area.getWidth()
        ? area.getValue(down, across)
        : ErrorEval.NA;
  }
}
