package tenthmark.checker.page;

import java.util.List;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Sheet;

/**
 * The part of a sheet that a page draws: its first rows and columns that hold something.
 *
 * @param rows their numbers, from 0
 * @param columns their numbers, from 0
 * @param allRows how many rows hold something
 * @param allColumns how many columns do
 */
record GridPart(List<Integer> rows, List<Integer> columns, int allRows, int allColumns) {

  private static final int MOST_ROWS = 300;
  private static final int MOST_COLUMNS = 40;

  /** The part of a sheet for which a page has room. */
  static GridPart of(Sheet sheet, int room) {
    List<Integer> columns =
        sheet.cells().map(Cell::address).map(cell -> cell.column()).distinct().sorted().toList();
    List<Integer> shown = columns.stream().limit(MOST_COLUMNS).toList();
    int rows = Math.min(MOST_ROWS, room / Math.max(1, shown.size()));
    return new GridPart(
        sheet.rows().stream().limit(rows).toList(), shown, sheet.rows().size(), columns.size());
  }

  /** How many cells it draws. */
  int size() {
    return rows.size() * columns.size();
  }

  /** Whether something of the sheet is left out. */
  boolean isCut() {
    return rows.size() < allRows || columns.size() < allColumns;
  }
}
