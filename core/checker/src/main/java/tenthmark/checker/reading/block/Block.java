package tenthmark.checker.reading.block;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Cells of a sheet that lie together.
 *
 * @param sheet where they lie
 * @param area the rectangle around them
 * @param cells row by row
 */
public record Block(TypedSheet sheet, CellRange area, List<TypedCell> cells) {

  /** A whole sheet. */
  public static Block of(TypedSheet sheet) {
    int right = 0;
    int bottom = 0;
    for (TypedCell cell : sheet.cells()) {
      right = Math.max(right, cell.address().column());
      bottom = Math.max(bottom, cell.address().row());
    }
    return new Block(sheet, new CellRange(sheet.name(), 0, 0, right, bottom), sheet.cells());
  }

  /** Copies the cells. */
  public Block {
    cells = List.copyOf(cells);
  }

  /** Line by line, rows or columns. */
  public Lines lines(Direction direction) {
    return new Lines(this, direction);
  }

  /** The cell of the sheet at a place. */
  public Optional<TypedCell> at(CellAddress address) {
    return sheet.at(address.column(), address.row());
  }

  /** The cells of a row. */
  public Collection<TypedCell> row(int row) {
    return sheet.row(row).subMap(area.left(), true, area.right(), true).values();
  }

  /** The cells of a row to the right of one, as far as the block goes. */
  public List<TypedCell> rightOf(TypedCell cell) {
    return new ArrayList<>(
        sheet
            .row(cell.address().row())
            .subMap(cell.address().column(), false, area.right(), true)
            .values());
  }
}
