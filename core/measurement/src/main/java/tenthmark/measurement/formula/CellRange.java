package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle of cells on one sheet, corners included, counted from 0.
 *
 * @param sheet the sheet's name
 */
public record CellRange(String sheet, int left, int top, int right, int bottom) {

  /** The range of one cell. */
  public static CellRange of(CellAddress cell) {
    return new CellRange(cell.sheet(), cell.column(), cell.row(), cell.column(), cell.row());
  }

  /** Number of rows, at least 1. */
  public int height() {
    return bottom - top + 1;
  }

  /** Number of columns, at least 1. */
  public int width() {
    return right - left + 1;
  }

  /** The top left cell. */
  public CellAddress first() {
    return new CellAddress(sheet, left, top);
  }

  /** The place on the sheet as a user writes it: {@code B4}, or {@code B4:B9}. */
  public String place() {
    String from = first().place();
    return width() == 1 && height() == 1
        ? from
        : from + ":" + new CellAddress(sheet, right, bottom).place();
  }

  /** The cells that this range and another one have in common, if there are any. */
  public Optional<CellRange> common(CellRange other) {
    CellRange common =
        new CellRange(
            sheet,
            Math.max(left, other.left),
            Math.max(top, other.top),
            Math.min(right, other.right),
            Math.min(bottom, other.bottom));
    return sheet.equalsIgnoreCase(other.sheet) && common.width() > 0 && common.height() > 0
        ? Optional.of(common)
        : Optional.empty();
  }

  /** Whether a cell lies in the range; sheets are the same in any letter case. */
  public boolean contains(CellAddress cell) {
    return sheet.equalsIgnoreCase(cell.sheet())
        && cell.column() >= left
        && cell.column() <= right
        && cell.row() >= top
        && cell.row() <= bottom;
  }

  /** Every cell, row by row. */
  public List<CellAddress> cells() {
    List<CellAddress> cells = new ArrayList<>();
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        cells.add(new CellAddress(sheet, column, row));
      }
    }
    return cells;
  }
}
