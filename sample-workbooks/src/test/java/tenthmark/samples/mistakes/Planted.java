package tenthmark.samples.mistakes;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/**
 * A mistake at a place.
 *
 * @param contents what the cells hold then; empty for one that holds nothing
 * @param places the cells at which a finding is at the right place
 */
record Planted(Map<CellAddress, Optional<Content>> contents, Set<CellAddress> places) {

  static Planted at(CellAddress cell, Content content) {
    return new Planted(Map.of(cell, Optional.of(content)), Set.of(cell));
  }

  static Planted number(CellAddress cell, double number) {
    return at(cell, new Content.Number(number));
  }

  static Planted formula(CellAddress cell, String text) {
    return at(cell, new Content.Formula(text, text, Optional.empty(), Optional.empty()));
  }

  static Planted blank(CellAddress cell) {
    return new Planted(Map.of(cell, Optional.empty()), Set.of(cell));
  }

  Planted and(Planted other) {
    Map<CellAddress, Optional<Content>> both = new LinkedHashMap<>(contents);
    both.putAll(other.contents);
    return new Planted(both, places).near(other.places);
  }

  /** The same, where further cells are the right place too. */
  Planted near(Set<CellAddress> others) {
    Set<CellAddress> all = new LinkedHashSet<>(places);
    all.addAll(others);
    return new Planted(contents, all);
  }
}
