package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Map;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;

/** One uncertainty for all values of a column: in the table, or stated elsewhere on the sheet. */
final class ColumnCommons {

  private final Lines lines;
  private final List<Integer> body;
  private final Map<Integer, Role> roles;
  private final List<Group> groups;
  private final Surroundings surroundings;
  private final TableLines told;

  ColumnCommons(
      Lines lines,
      List<Integer> body,
      Map<Integer, Role> roles,
      List<Group> groups,
      Surroundings surroundings,
      TableLines told) {
    this.lines = lines;
    this.body = body;
    this.roles = roles;
    this.groups = groups;
    this.surroundings = surroundings;
    this.told = told;
  }

  /** One uncertainty for a whole column: in its first cell, or in a line of its own. */
  void inTable() {
    for (Group group : groups) {
      group
          .column(Field.UNCERTAINTY)
          .filter(column -> column.numbers().size() == 1 && group.value().cells().size() > 2)
          .filter(column -> column.cells().size() == 1)
          .filter(column -> column.cells().firstKey().equals(group.value().cells().firstKey()))
          .ifPresent(
              column ->
                  group.common(new Group.Common(column.numbers().get(0).address(), column.unit())));
    }
    for (int line : body) {
      if (!isUncertaintyOfColumns(line)) {
        continue;
      }
      for (Group group : groups) {
        lines
            .at(line, group.value().place())
            .filter(TypedCell::mayBeNumber)
            .filter(cell -> !group.hasUncertainty())
            .ifPresent(
                cell -> {
                  group.common(new Group.Common(cell.address(), ""));
                });
      }
    }
  }

  /** What a cell or a line of text elsewhere on the sheet states for a column that has none. */
  void elsewhere() {
    for (Group group : groups) {
      boolean open =
          !group.hasUncertainty()
              && roles.get(group.value().place()) == Role.VALUE
              && group.value().isOfNumbers()
              && group.value().isMostlyTyped()
              && !mayCount(group.value());
      if (open) {
        group.onlyTyped();
        surroundings
            .common(lines.block().sheet())
            .of(group.value())
            .ifPresent(
                common ->
                    common
                        .cell()
                        .ifPresentOrElse(
                            cell -> group.common(new Group.Common(cell, common.size().unit())),
                            () -> group.give(common.size())));
      }
    }
  }

  /** Whole numbers without unit, in a table whose other values have units, count something. */
  private boolean mayCount(Column values) {
    return values.unit().isEmpty()
        && values.isWhole()
        && groups.stream()
            .map(Group::value)
            .anyMatch(other -> !other.unit().isEmpty() && other.isMostlyTyped());
  }

  /** A line that a label calls the uncertainty of all above, unless it is one of a mean. */
  private boolean isUncertaintyOfColumns(int line) {
    if (!told.isUncertaintyLine(line) || !TableLines.isBare(told.label(line).orElseThrow())) {
      return false;
    }
    int before = body.indexOf(line) - 1;
    return (before < 0 || told.label(body.get(before)).isEmpty())
        && body.stream()
            .noneMatch(other -> told.label(other).filter(h -> h.can(Role.MEAN)).isPresent());
  }
}
