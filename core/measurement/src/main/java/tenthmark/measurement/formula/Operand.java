package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * What an expression or a cell amounts to.
 *
 * @param <T> the numbers of the field
 */
public sealed interface Operand<T> {

  /** A number. */
  record Number<T>(T value) implements Operand<T> {}

  /** A text. */
  record Text<T>(String text) implements Operand<T> {}

  /** An empty cell, or an argument left out. */
  record Blank<T>() implements Operand<T> {}

  /** A cell that has no value; the problem arises only where the value is needed. */
  record Fault<T>(FormulaException problem) implements Operand<T> {}

  /**
   * A rectangle.
   *
   * @param rows the part that holds anything; rows beyond it, and cells beyond a row, are blank
   */
  record Block<T>(int height, int width, List<List<Operand<T>>> rows) implements Operand<T> {

    /** One cell, counted from 0. */
    public Operand<T> at(int row, int column) {
      if (row < rows.size() && column < rows.get(row).size()) {
        return rows.get(row).get(column);
      }
      return new Blank<>();
    }

    Block<T> row(int row) {
      return new Block<>(1, width, row < rows.size() ? List.of(rows.get(row)) : List.of());
    }

    Block<T> column(int column) {
      return new Block<>(height, 1, rows.stream().map(row -> List.of(cell(row, column))).toList());
    }

    private static <T> Operand<T> cell(List<Operand<T>> row, int column) {
      return column < row.size() ? row.get(column) : new Blank<>();
    }

    /** The cells of the upper left part, row by row. */
    List<Operand<T>> cells(int usedHeight, int usedWidth) {
      List<Operand<T>> cells = new ArrayList<>();
      for (int row = 0; row < usedHeight; row++) {
        for (int column = 0; column < usedWidth; column++) {
          cells.add(at(row, column));
        }
      }
      return cells;
    }

    int usedWidth() {
      return rows.stream().mapToInt(List::size).max().orElse(0);
    }
  }
}
