package tenthmark.checker.evaluation;

import java.util.List;
import java.util.function.ToIntFunction;
import org.apache.poi.ss.formula.CacheAreaEval;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.TwoDEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.RefEval;
import org.apache.poi.ss.formula.eval.ValueEval;

/** Arguments that a function of single values takes cell by cell in an array formula. */
record ArrayArguments(List<ValueEval> arguments) {

  /** A whole column; a few of them in one small formula would fill the memory otherwise. */
  private static final int MOST = 1 << 20;

  static ArrayArguments of(ValueEval... arguments) {
    return new ArrayArguments(List.of(arguments));
  }

  /** Gives the result of one cell. */
  @FunctionalInterface
  interface Result {
    ValueEval at(int row, int column);
  }

  /** The results for all cells, as one value where there is one cell. */
  ValueEval results(OperationEvaluationContext context, Result result) {
    int height = size(TwoDEval::getHeight);
    int width = size(TwoDEval::getWidth);
    if ((long) height * width > MOST) {
      throw NotCheckableException.of("reason.arrays.large", MOST);
    }
    ValueEval[] cells = new ValueEval[height * width];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = result.at(i / width, i % width);
    }
    int top = context.getRowIndex();
    int left = context.getColumnIndex();
    return cells.length == 1
        ? cells[0]
        : new CacheAreaEval(top, left, top + height - 1, left + width - 1, cells);
  }

  private int size(ToIntFunction<TwoDEval> side) {
    return arguments.stream()
        .mapToInt(argument -> argument instanceof TwoDEval area ? side.applyAsInt(area) : 1)
        .max()
        .orElseThrow();
  }

  boolean isSingle(int index) {
    return !(arguments.get(index) instanceof TwoDEval area)
        || area.getHeight() * area.getWidth() == 1;
  }

  /** The cell of an argument; a single row, column or value repeats itself. */
  ValueEval at(int index, int row, int column) {
    return element(arguments.get(index), row, column);
  }

  static ValueEval element(ValueEval argument, int row, int column) {
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
