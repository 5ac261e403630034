package tenthmark.checker.record;

import java.util.List;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Records that stand together on a sheet.
 *
 * @param area the cells that their table takes, headings included
 * @param across whether they stand side by side, each in a column
 */
public record RecordTable(List<MeasurementRecord> records, CellRange area, boolean across) {

  /** Copies the list. */
  public RecordTable {
    records = List.copyOf(records);
  }

  /** The line of a record within the table: its row or its column. */
  public CellRange line(CellAddress value) {
    return across
        ? new CellRange(area.sheet(), value.column(), area.top(), value.column(), area.bottom())
        : new CellRange(area.sheet(), area.left(), value.row(), area.right(), value.row());
  }
}
