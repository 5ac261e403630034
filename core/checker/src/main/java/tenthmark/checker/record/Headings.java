package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;

/**
 * The headings of one table.
 *
 * @param row the row that they stand in
 * @param columns the column of each field
 * @param units the unit that a heading states, where it states one
 */
record Headings(int row, Map<Field, Integer> columns, Map<Field, String> units) {

  /** The tables whose headings stand in a row; a field named again begins another table. */
  static List<Headings> in(Sheet sheet, int row, HeadingWords words) {
    List<Headings> all = new ArrayList<>();
    Map<Integer, Heading> current = new TreeMap<>();
    for (Cell cell : sheet.row(row)) {
      Optional<Heading> heading = heading(cell, words);
      if (heading.isPresent()) {
        if (holds(current, heading.get().field()) && isComplete(current)) {
          all.add(of(row, current));
          current.clear();
        }
        if (!holds(current, heading.get().field())) {
          current.put(cell.address().column(), heading.get());
        }
      }
    }
    if (isComplete(current)) {
      all.add(of(row, current));
    }
    return all;
  }

  private static Headings of(int row, Map<Integer, Heading> headings) {
    Map<Field, Integer> columns = new EnumMap<>(Field.class);
    Map<Field, String> units = new EnumMap<>(Field.class);
    headings.forEach(
        (column, heading) -> {
          columns.put(heading.field(), column);
          if (!heading.unit().isEmpty()) {
            units.put(heading.field(), heading.unit());
          }
        });
    return new Headings(row, columns, units);
  }

  private static boolean holds(Map<Integer, Heading> headings, Field field) {
    return headings.values().stream().anyMatch(heading -> heading.field() == field);
  }

  private static boolean isComplete(Map<Integer, Heading> headings) {
    return holds(headings, Field.VALUE) && headings.values().stream().anyMatch(Heading::isTelling);
  }

  private static Optional<Heading> heading(Cell cell, HeadingWords words) {
    return cell.content() instanceof Content.Text text
        ? Heading.read(text.text(), words)
        : Optional.empty();
  }

  int left() {
    return Collections.min(columns.values());
  }

  int right() {
    return Collections.max(columns.values());
  }
}
