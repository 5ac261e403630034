package tenthmark.checker.reading.layout;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import tenthmark.checker.reading.words.Heading;
import tenthmark.measurement.formula.CellAddress;

/**
 * The headings of a table, however many lines they fill.
 *
 * @param first the first of their lines
 * @param last the last of their lines, units included
 * @param headings by place
 * @param cells where each heading stands
 */
record Header(
    int first, int last, NavigableMap<Integer, Heading> headings, Map<Integer, CellAddress> cells) {

  Header {
    headings = new TreeMap<>(headings);
    cells = Map.copyOf(cells);
  }

  int left() {
    return headings.firstKey();
  }

  int right() {
    return headings.lastKey();
  }

  /** How many of its headings say more than a name. */
  long telling() {
    return headings.values().stream().filter(Heading::isTelling).count();
  }

  /** Whether at least one heading says more than a name. */
  boolean isTelling() {
    return telling() > 0;
  }

  /** Whether it shares a place with another. */
  boolean overlaps(Header other) {
    return left() <= other.right() && right() >= other.left();
  }
}
