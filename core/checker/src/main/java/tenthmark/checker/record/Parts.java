package tenthmark.checker.record;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.words.GivenUncertainty;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.formula.CellAddress;

/**
 * Where the parts of a record stand, and what headings say of them.
 *
 * @param places the cell of each part that the table has a place for, filled or not
 * @param units by part, as headings state them
 * @param said texts of parts that stand in a heading instead of a cell of their own
 * @param given the uncertainty, if a heading or a line of text states one for many values
 * @param unitTold whether a text on the sheet tells the units of all values
 * @param beside the cells of the record's row or column
 */
public record Parts(
    Map<Field, CellAddress> places,
    Map<Field, String> units,
    Map<Field, String> said,
    Optional<GivenUncertainty> given,
    boolean unitTold,
    List<Cell> beside) {

  /** Copies the collections. */
  public Parts {
    Map<Field, CellAddress> ordered = new EnumMap<>(Field.class);
    ordered.putAll(places);
    places = java.util.Collections.unmodifiableMap(ordered);
    units = Map.copyOf(units);
    said = Map.copyOf(said);
    beside = List.copyOf(beside);
  }
}
