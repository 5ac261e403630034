package tenthmark.checker.reading;

import java.util.Map;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellRange;

/**
 * How the course says that a table is to be read.
 *
 * @param range of its records, headings left out
 * @param across whether the records stand side by side, a column each
 * @param fields by the column's number (the row's, if across), from 0 for column A or row 1
 */
public record TableGuide(CellRange range, boolean across, Map<Integer, Field> fields) {

  /** Copies the fields. */
  public TableGuide {
    fields = Map.copyOf(fields);
  }
}
