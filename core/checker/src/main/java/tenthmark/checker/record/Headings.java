package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellRange;

/**
 * The headings of one table.
 *
 * @param line the line that they stand in
 * @param places the place of each field in a line
 * @param units the unit that a heading states, where it states one
 * @param telling whether they tell measurements from other quantities with value and unit
 */
record Headings(int line, Map<Field, Integer> places, Map<Field, String> units, boolean telling) {

  /** Words in a column are headings only if they are this many. */
  private static final int FEWEST_IN_A_COLUMN = 3;

  /** The tables whose headings stand in a line; a field named again begins another table. */
  static List<Headings> in(Lines lines, int line, HeadingReader reader) {
    List<Headings> all = new ArrayList<>();
    if (lines.areColumns()) {
      lines.runs(line).forEach(run -> add(run, lines, line, reader, all));
      all.removeIf(headings -> headings.places().size() < FEWEST_IN_A_COLUMN);
    } else {
      add(lines.cells(line), lines, line, reader, all);
    }
    return all;
  }

  private static void add(
      List<Cell> cells, Lines lines, int line, HeadingReader reader, List<Headings> all) {
    Map<Integer, Heading> current = new TreeMap<>();
    boolean named = cells.stream().anyMatch(cell -> isOfValue(cell, reader));
    for (Cell cell : cells) {
      Map<Integer, Heading> own = named(cell, lines, line, reader);
      (own.isEmpty() && !named ? symbol(cell, lines, current) : own)
          .forEach(
              (place, heading) -> {
                if (holds(current, heading.field()) && isComplete(current.values())) {
                  all.add(of(lines, line, current, right(all)));
                  current.clear();
                }
                if (!holds(current, heading.field())) {
                  current.put(place, heading);
                }
              });
    }
    if (isComplete(current.values())) {
      all.add(of(lines, line, current, right(all)));
    }
  }

  /** The heading in a cell by its place; under a merged one, those of the line below. */
  private static Map<Integer, Heading> named(
      Cell cell, Lines lines, int line, HeadingReader reader) {
    Optional<Heading> own = heading(cell, reader);
    Map<Integer, Heading> named = new TreeMap<>();
    if (text(cell).isPresent()) {
      lines
          .group(cell.address())
          .ifPresent(
              group ->
                  below(group, lines, line, reader)
                      .forEach(
                          (place, heading) -> {
                            if (belongs(heading, own)) {
                              named.put(place, heading.within(own));
                            }
                          }));
    }
    if (named.isEmpty()) {
      own.ifPresent(heading -> named.put(lines.place(cell.address()), heading));
    }
    return named;
  }

  private static Map<Integer, Heading> below(
      CellRange group, Lines lines, int line, HeadingReader reader) {
    Map<Integer, Heading> below = new TreeMap<>();
    for (Cell cell : lines.cells(line + 1, group.left(), group.right())) {
      heading(cell, reader).ifPresent(found -> below.put(lines.place(cell.address()), found));
    }
    return below;
  }

  /** Under an uncertainty stand its parts and their total, not another value. */
  private static boolean belongs(Heading heading, Optional<Heading> group) {
    return group.filter(over -> over.field() == Field.UNCERTAINTY).isEmpty()
        || heading.field() == Field.UNCERTAINTY
        || Field.CONTRIBUTIONS.contains(heading.field());
  }

  private static boolean isOfValue(Cell cell, HeadingReader reader) {
    return heading(cell, reader).filter(heading -> heading.field() == Field.VALUE).isPresent();
  }

  /**
   * The value's column may bear the symbol of its quantity, if the quantity's own column stands
   * before it.
   */
  private static Map<Integer, Heading> symbol(
      Cell cell, Lines lines, Map<Integer, Heading> before) {
    return holds(before, Field.QUANTITY) && !holds(before, Field.VALUE)
        ? text(cell)
            .flatMap(Heading::ofValue)
            .map(heading -> Map.of(lines.place(cell.address()), heading))
            .orElse(Map.of())
        : Map.of();
  }

  /**
   * Where no heading names the quantity, the texts to the left of all columns do, or a first column
   * that is headed as a result.
   */
  private static void nameQuantity(
      Lines lines, int line, Map<Field, Integer> places, int previousRight) {
    int left = Collections.min(places.values());
    if (places.containsKey(Field.QUANTITY) || lines.areColumns()) {
      return;
    }
    if (Integer.valueOf(left).equals(places.get(Field.RESULT))) {
      places.remove(Field.RESULT);
      places.put(Field.QUANTITY, left);
    } else if (left - 1 > previousRight
        && lines.cells(line + 1, left - 1, left - 1).stream()
            .anyMatch(cell -> text(cell).isPresent())) {
      places.put(Field.QUANTITY, left - 1);
    }
  }

  private static Headings of(
      Lines lines, int line, Map<Integer, Heading> headings, int previousRight) {
    Map<Field, Integer> places = new EnumMap<>(Field.class);
    Map<Field, String> units = new EnumMap<>(Field.class);
    headings.forEach(
        (place, heading) -> {
          places.put(heading.field(), place);
          if (!heading.unit().isEmpty()) {
            units.put(heading.field(), heading.unit());
          }
        });
    unitsBelow(lines, line, places).forEach(units::putIfAbsent);
    nameQuantity(lines, line, places, previousRight);
    return new Headings(
        line, places, units, headings.values().stream().anyMatch(Heading::isTelling));
  }

  /** The units in the line below the headings, if it holds nothing but texts. */
  private static Map<Field, String> unitsBelow(Lines lines, int line, Map<Field, Integer> places) {
    Map<Field, String> units = new EnumMap<>(Field.class);
    List<Cell> below =
        lines.cells(line + 1, Collections.min(places.values()), Collections.max(places.values()));
    if (below.stream().allMatch(cell -> text(cell).isPresent())) {
      places.forEach(
          (field, place) ->
              lines.cells(line + 1, place, place).stream()
                  .flatMap(cell -> text(cell).flatMap(Heading::unitAlone).stream())
                  .forEach(unit -> units.put(field, unit)));
    }
    return units;
  }

  private static int right(List<Headings> all) {
    return all.isEmpty() ? -1 : all.get(all.size() - 1).right();
  }

  private static boolean holds(Map<Integer, Heading> headings, Field field) {
    return headings.values().stream().anyMatch(heading -> heading.field() == field);
  }

  private static boolean isComplete(Collection<Heading> headings) {
    boolean value = headings.stream().anyMatch(heading -> heading.field() == Field.VALUE);
    boolean unit = headings.stream().anyMatch(heading -> heading.field() == Field.UNIT);
    boolean quantity = headings.stream().anyMatch(Heading::isOfQuantity);
    return value && (headings.stream().anyMatch(Heading::isTelling) || (unit && quantity));
  }

  private static Optional<Heading> heading(Cell cell, HeadingReader reader) {
    return text(cell).flatMap(reader::heading);
  }

  private static Optional<String> text(Cell cell) {
    return cell.content() instanceof Content.Text text
        ? Optional.of(text.text())
        : Optional.empty();
  }

  int left() {
    return Collections.min(places.values());
  }

  int right() {
    return Collections.max(places.values());
  }
}
