package tenthmark.samples.mistakes;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.measurement.formula.CellAddress;

/**
 * A record as whoever drew the workbook states it.
 *
 * @param kind measured, calculated, mean, slope or intercept
 * @param unit as a person understands it
 * @param value its cell
 * @param uncertainty the cell, if it has one of its own
 * @param contributions their cells by kind
 * @param reason the cell, if the reason stands in one
 */
record Stated(
    String kind,
    String unit,
    CellAddress value,
    Optional<CellAddress> uncertainty,
    Map<String, CellAddress> contributions,
    Optional<CellAddress> reason) {

  boolean is(String... kinds) {
    return Set.of(kinds).contains(kind);
  }

  /** Where a finding about it may stand. */
  Set<CellAddress> places() {
    Set<CellAddress> places = new LinkedHashSet<>();
    places.add(value);
    uncertainty.ifPresent(places::add);
    places.addAll(contributions.values());
    reason.ifPresent(places::add);
    return places;
  }
}
