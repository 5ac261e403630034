package tenthmark.measurement.formula;

/**
 * A cell by its sheet's name and its place there, both counted from 0.
 *
 * @param sheet the sheet's name
 * @param column 0 for column A
 * @param row 0 for row 1
 */
public record CellAddress(String sheet, int column, int row) {

  /** The place on the sheet as a user writes it: {@code B4}. */
  public String place() {
    StringBuilder letters = new StringBuilder();
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
      letters.insert(0, (char) ('A' + (rest - 1) % 26));
    }
    return letters.append(row + 1).toString();
  }

  // What the language generates is put together at run time, slowly; cells are looked up very
  // often.

  @Override
  public boolean equals(Object other) {
    return other instanceof CellAddress cell
        && row == cell.row
        && column == cell.column
        && sheet.equals(cell.sheet);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * sheet.hashCode() + column) + row;
  }

  /** The cell as a sentence names it, with its sheet: {@code Timing.B4}. */
  @Override
  public String toString() {
    return sheet + "." + place();
  }
}
