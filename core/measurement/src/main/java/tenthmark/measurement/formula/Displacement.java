package tenthmark.measurement.formula;

import java.util.Optional;

/**
 * How far from the cell for which it was written a formula is read. Relative references move along,
 * and go on at the other end of the sheet where they would leave it, as office programs have it.
 *
 * @param columns to the right
 * @param rows down
 * @param size that of the sheets
 * @param sheet the sheet for which it was written, if it is read from another one too
 */
record Displacement(int columns, int rows, SheetSize size, Optional<String> sheet) {

  /** A formula read in its own cell. */
  static final Displacement NONE = new Displacement(0, 0, SheetSize.LARGE, Optional.empty());

  /** From the cell for which a name was defined to the one that uses it. */
  static Displacement of(NamedFormula name, CellAddress user) {
    CellAddress base = name.base();
    return new Displacement(
        user.column() - base.column(),
        user.row() - base.row(),
        name.size(),
        base.sheet().equalsIgnoreCase(user.sheet()) ? Optional.empty() : Optional.of(base.sheet()));
  }

  int column(int column, boolean relative) {
    return relative ? Math.floorMod(column + columns, size.columns()) : column;
  }

  int row(int row, boolean relative) {
    return relative ? Math.floorMod(row + rows, size.rows()) : row;
  }

  /**
   * A sheet that a formula writes without the sign of a fixed one: the sheet of the reader, which
   * is null, where the formula means its own.
   */
  String relative(String written) {
    if (sheet.isPresent() && !sheet.get().equalsIgnoreCase(written)) {
      throw FormulaException.of("formula.name.sheet", written);
    }
    return sheet.isPresent() ? null : written;
  }
}
