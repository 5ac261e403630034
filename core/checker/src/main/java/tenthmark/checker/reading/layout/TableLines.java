package tenthmark.checker.reading.layout;

import java.util.Optional;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;

/**
 * What the lines of a table say of themselves: their labels, and which of their cells are filled.
 */
final class TableLines {

  private final Lines lines;
  private final HeadingGrammar grammar;

  TableLines(Lines lines, HeadingGrammar grammar) {
    this.lines = lines;
    this.grammar = grammar;
  }

  /** The first text of a line that stands left of its values. */
  Optional<Heading> label(int line) {
    return lines.line(line).values().stream()
        .findFirst()
        .filter(TypedCell::isText)
        .flatMap(cell -> grammar.read(cell.text()));
  }

  /** What names a record: its quantity, else the first text of its line. */
  Optional<Heading> label(Group group, int line) {
    return group
        .column(Field.QUANTITY)
        .map(column -> column.cells().get(line))
        .filter(TypedCell::isText)
        .flatMap(cell -> grammar.read(cell.text()))
        .or(() -> label(line));
  }

  boolean isUncertaintyLine(int line) {
    return label(line)
        .filter(
            heading ->
                heading.can(Role.UNCERTAINTY) && heading.roles().size() == 1
                    || heading.mark() == Heading.Mark.SURE)
        .isPresent();
  }

  static boolean isBare(Heading label) {
    return label.name().isEmpty();
  }

  boolean filled(Group group, Field field, int line) {
    return group
        .column(field)
        .map(Column::cells)
        .filter(cells -> cells.containsKey(line))
        .isPresent();
  }

  boolean isSized(Group group, Field field, int line) {
    return group
        .column(field)
        .map(column -> column.cells().get(line))
        .filter(cell -> cell.mayBeNumber() || Column.isAmount(cell.text()))
        .isPresent();
  }

  boolean isTypedNumber(Group group, Field field, int line) {
    return group
        .column(field)
        .map(column -> column.cells().get(line))
        .filter(cell -> cell.isTyped() && cell.number() != 0)
        .isPresent();
  }
}
