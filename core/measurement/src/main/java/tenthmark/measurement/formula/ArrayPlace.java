package tenthmark.measurement.formula;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * One cell of an array that is computed, with what has been found out for all its cells.
 *
 * @param wholes what the parts amount to that are the same for each cell
 * @param <T> the numbers of the field
 */
record ArrayPlace<T>(int row, int column, Map<Expression, Operand<T>> wholes) {

  static <T> ArrayPlace<T> first(int row, int column) {
    return new ArrayPlace<>(row, column, new IdentityHashMap<>());
  }

  ArrayPlace<T> at(int otherRow, int otherColumn) {
    return new ArrayPlace<>(otherRow, otherColumn, wholes);
  }

  Operand<T> whole(Expression expression, Supplier<Operand<T>> value) {
    Operand<T> known = wholes.get(expression);
    if (known == null) {
      known = value.get();
      wholes.put(expression, known);
    }
    return known;
  }

  /** What stands at this place; one row, one column or one cell repeats itself. */
  Operand<T> cell(Operand<T> operand) {
    if (!(operand instanceof Operand.Block<T> block)) {
      return operand;
    }
    int down = block.height() == 1 ? 0 : row;
    int across = block.width() == 1 ? 0 : column;
    return down < block.height() && across < block.width()
        ? block.at(down, across)
        : new Operand.Fault<>(FormulaException.notAvailable("formula.beyond"));
  }
}
