package tenthmark.checker.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  /** What tells a table of measurements from a list of values. */
  private static final Set<Field> TELLING =
      Set.of(
          Field.UNCERTAINTY,
          Field.DIVISION,
          Field.RATIONALE,
          Field.RESULT,
          Field.PHYSICAL,
          Field.INSTRUMENT,
          Field.REPEAT);

  /** The tables whose headings stand in a row; a field named again begins another table. */
  static List<Headings> in(Sheet sheet, int row) {
    List<Headings> all = new ArrayList<>();
    Headings current = empty(row);
    for (Cell cell : sheet.row(row)) {
      Optional<Heading> heading = heading(cell);
      if (heading.isPresent()) {
        if (current.columns.containsKey(heading.get().field()) && current.isComplete()) {
          all.add(current);
          current = empty(row);
        }
        current.add(heading.get(), cell.address().column());
      }
    }
    if (current.isComplete()) {
      all.add(current);
    }
    return all;
  }

  private static Headings empty(int row) {
    return new Headings(row, new EnumMap<>(Field.class), new EnumMap<>(Field.class));
  }

  private static Optional<Heading> heading(Cell cell) {
    return cell.content() instanceof Content.Text text
        ? Heading.read(text.text())
        : Optional.empty();
  }

  private void add(Heading heading, int column) {
    if (columns.putIfAbsent(heading.field(), column) == null && !heading.unit().isEmpty()) {
      units.put(heading.field(), heading.unit());
    }
  }

  private boolean isComplete() {
    return columns.containsKey(Field.VALUE) && !Collections.disjoint(columns.keySet(), TELLING);
  }

  int left() {
    return Collections.min(columns.values());
  }

  int right() {
    return Collections.max(columns.values());
  }
}
