package tenthmark.checker.evaluation;

import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.TwoDEval;
import org.apache.poi.ss.formula.atp.AnalysisToolPak;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.functions.Function;
import org.apache.poi.ss.formula.functions.Rept;

/**
 * The functions that can make a long text of short ones, with the length that a cell may have: one
 * formula could fill the memory otherwise. POI computes the text before it looks at the length.
 */
final class BoundedText {

  /**
   * Most characters of a cell (ECMA-376, part 1, 22.9.2.19, ST_Xstring as spreadsheets hold it).
   */
  static final int MOST = 32_767;

  private static final FreeRefFunction JOIN = AnalysisToolPak.instance.findFunction("TEXTJOIN");

  private BoundedText() {}

  /** A function of POI that gives an error where its text would be too long. */
  static FreeRefFunction of(Function function) {
    return (arguments, context) -> call(function, arguments, context);
  }

  /** POI's TEXTJOIN, which gives an error where its text would be too long. */
  static ValueEval join(ValueEval[] arguments, OperationEvaluationContext context) {
    return joined(arguments) > MOST ? ErrorEval.VALUE_INVALID : JOIN.evaluate(arguments, context);
  }

  private static ValueEval call(
      Function function, ValueEval[] arguments, OperationEvaluationContext context) {
    int row = context.getRowIndex();
    int column = context.getColumnIndex();
    try {
      return length(function, arguments, row, column) > MOST
          ? ErrorEval.VALUE_INVALID
          : function.evaluate(arguments, row, column);
    } catch (EvaluationException error) {
      return error.getErrorEval();
    }
  }

  /** At least the length of the result, without computing it. */
  private static double length(Function function, ValueEval[] arguments, int row, int column)
      throws EvaluationException {
    if (arguments.length < 2) {
      return 0;
    }
    String text = text(arguments[0], row, column);
    if (function instanceof Rept) {
      ValueEval times = OperandResolver.getSingleValue(arguments[1], row, column);
      return text.length() * OperandResolver.coerceValueToDouble(times);
    }
    String old = text(arguments[1], row, column);
    int added = arguments.length < 3 ? 0 : text(arguments[2], row, column).length() - old.length();
    return old.isEmpty() || added <= 0
        ? text.length()
        : text.length() + (double) occurrences(text, old) * added;
  }

  private static int occurrences(String text, String part) {
    int count = 0;
    for (int at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + part.length())) {
      count++;
    }
    return count;
  }

  private static String text(ValueEval argument, int row, int column) throws EvaluationException {
    return OperandResolver.coerceValueToString(
        OperandResolver.getSingleValue(argument, row, column));
  }

  /** The characters of all texts among the arguments and of a delimiter after each. */
  private static long joined(ValueEval[] arguments) {
    long length = 0;
    long delimiter =
        arguments.length > 0 && arguments[0] instanceof StringEval text
            ? text.getStringValue().length()
            : 0;
    for (int i = 2; i < arguments.length && length <= MOST; i++) {
      length += delimiter + length(arguments[i], delimiter);
    }
    return length;
  }

  private static long length(ValueEval argument, long delimiter) {
    if (argument instanceof StringEval text) {
      return text.getStringValue().length();
    }
    long length = 0;
    if (argument instanceof TwoDEval area) {
      for (int row = 0; row < area.getHeight() && length <= MOST; row++) {
        for (int column = 0; column < area.getWidth() && length <= MOST; column++) {
          ValueEval cell = area.getValue(row, column);
          length +=
              cell instanceof StringEval text ? text.getStringValue().length() + delimiter : 0;
        }
      }
    }
    return length;
  }
}
