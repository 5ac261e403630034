package tenthmark.measurement.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * What makes up an uncertainty, one row for each contribution and the total in the last row.
 *
 * @param columns keys of the headings in the sentences; a column of shares is {@link #SHARE}
 * @param rows as many columns as there are headings
 * @param cells the range whose cells the rows stand for, if they do; the first column is then only
 *     a label for them
 * @param places the cell of each row but the last in that range, counted from 0 row by row
 */
public record Breakdown(
    List<String> columns, Value.Table rows, Optional<Parameter<?>> cells, List<Integer> places) {

  /** The key of the heading over parts of the total. */
  public static final String SHARE = "column.share";
}
