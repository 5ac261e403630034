package tenthmark.checker.reading;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import tenthmark.measurement.formula.CellAddress;

/**
 * What each cell was taken for: every cell whose value is a number, and the texts that mean
 * something for them.
 *
 * @param cells sheet by sheet, row by row
 */
public record Coverage(Map<CellAddress, Taken> cells) {

  /** Keeps the cells as they are: a second map of a whole workbook would cost as much as it. */
  public Coverage {
    cells = Collections.unmodifiableMap(cells);
  }

  /** What a cell was taken for; empty for one that holds nothing, or a text without meaning. */
  public Optional<Taken> at(CellAddress cell) {
    return Optional.ofNullable(cells.get(cell));
  }
}
