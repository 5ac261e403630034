package tenthmark.checker.reading.block;

import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Whether each line of a table is a row or a column. */
public enum Direction {
  ROWS,
  COLUMNS;

  /** The number of the line that a cell stands in. */
  public int line(CellAddress cell) {
    return this == ROWS ? cell.row() : cell.column();
  }

  /** The number of a cell within its line. */
  public int place(CellAddress cell) {
    return this == ROWS ? cell.column() : cell.row();
  }

  /** The cell at a place of a line. */
  public CellAddress address(String sheet, int line, int place) {
    return this == ROWS ? new CellAddress(sheet, place, line) : new CellAddress(sheet, line, place);
  }

  /** A range as its lines lie: lines from top to bottom, places from left to right. */
  public CellRange turned(CellRange range) {
    return this == ROWS
        ? range
        : new CellRange(
            range.sheet(),
            /* left= */ range.top(),
            /* top= */ range.left(),
            /* right= */ range.bottom(),
            /* bottom= */ range.right());
  }
}
