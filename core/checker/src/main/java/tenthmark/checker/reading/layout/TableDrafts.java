package tenthmark.checker.reading.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;

/** Makes the records of a table: the parts of each, its name and its unit. */
final class TableDrafts {

  private final Lines lines;
  private final Header header;
  private final List<Column> columns;
  private final Map<Integer, Role> roles;
  private final List<Group> groups;
  private final Surroundings surroundings;
  private final HeadingGrammar grammar;
  private final TableLines told;
  private final Optional<Integer> reasonLine;

  /** Whether the uncertainties of a group are parts of its values: looked at once for all lines. */
  private final Map<Group, Boolean> relative = new HashMap<>();

  TableDrafts(
      Lines lines,
      Header header,
      List<Column> columns,
      Map<Integer, Role> roles,
      List<Group> groups,
      Surroundings surroundings,
      Optional<Integer> reasonLine) {
    this.lines = lines;
    this.header = header;
    this.columns = columns;
    this.roles = roles;
    this.groups = groups;
    this.surroundings = surroundings;
    this.grammar = surroundings.grammar();
    this.told = new TableLines(lines, grammar);
    this.reasonLine = reasonLine;
  }

  /** The record of a group in a line. */
  Draft draft(Group group, int line) {
    Draft draft = new Draft(line);
    CellAddress value = lines.address(line, group.value().place());
    draft.put(Field.VALUE, value);
    draft.unit(Field.VALUE, group.value().unit());
    group
        .attached()
        .forEach(
            (field, column) -> {
              draft.put(field, lines.address(line, column.place()));
              draft.unit(field, unit(group, field, column));
              column.headingCell().ifPresent(draft::heading);
            });
    group.value().headingCell().ifPresent(draft::heading);
    group.given().filter(given -> !group.has(Field.UNCERTAINTY)).ifPresent(draft::given);
    group
        .common()
        .ifPresent(
            common -> {
              draft.drop(Field.UNCERTAINTY);
              draft.sharing(common.cell(), common.unit());
            });
    boolean own = draft.place(Field.UNCERTAINTY).flatMap(surroundings::at).isPresent();
    if (!own) {
      surroundings
          .pairs()
          .uncertainty(value)
          .ifPresent(
              cell -> {
                draft.drop(Field.UNCERTAINTY);
                if (surroundings.pairs().isShared(cell)) {
                  draft.sharing(cell, "");
                } else {
                  draft.put(Field.UNCERTAINTY, cell);
                }
              });
    }
    reasonLine.ifPresent(
        reason ->
            lines
                .at(reason, group.value().place())
                .filter(TypedCell::isText)
                .ifPresent(text -> draft.put(Field.RATIONALE, text.address())));
    name(group, line, draft);
    draft.beside(
        lines.direction() == Direction.ROWS
            ? lines.line(line).values()
            : lines.line(line).subMap(header.left(), true, header.right(), true).values());
    if (groupsOfMeasurements() > 1) {
      draft.own();
    }
    return draft;
  }

  private String unit(Group group, Field field, Column column) {
    boolean pure =
        field == Field.UNCERTAINTY
            && column.unit().isEmpty()
            && relative.computeIfAbsent(group, one -> isRelative(one, column));
    return pure ? "1" : column.unit();
  }

  private boolean isRelative(Group group, Column uncertainty) {
    return uncertainty.heading().filter(Heading::isRelative).isPresent()
        || uncertainty.isPartOf(group.value(), surroundings.pairs());
  }

  /** The quantity: of its own column, else of the heading. */
  private void name(Group group, int line, Draft draft) {
    Optional<Heading> heading = group.value().heading();
    String name = heading.map(Heading::name).orElse("");
    Optional<Heading> named = group.column(Field.QUANTITY).flatMap(Column::heading);
    boolean ownColumn = named.filter(h -> h.can(Role.QUANTITY)).isPresent();
    boolean own = told.filled(group, Field.QUANTITY, line);
    if (!name.isEmpty()
        && !isOfSeveralUnits(group)
        && !ownColumn
        && groupsOfMeasurements() > 0
        && !isBareSymbolBesideNames(group, heading)) {
      draft.drop(Field.QUANTITY);
      draft.say(Field.QUANTITY, name);
    }
    if (roles.get(group.value().place()) == Role.MEAN) {
      series(group, line)
          .ifPresent(
              label -> {
                draft.unit(Field.VALUE, label.heading().unit());
                if (name.isEmpty() && !own) {
                  draft.say(Field.QUANTITY, label.heading().name());
                }
              });
    }
    if (!group.has(Field.SYMBOL)) {
      heading.ifPresent(h -> draft.say(Field.SYMBOL, h.symbol()));
    }
    beside(group, line)
        .ifPresent(
            label -> {
              draft.relabel(label.name().isEmpty() ? name : label.name(), label.unit());
            });
    if (own && draft.unit(Field.VALUE).isEmpty() && draft.place(Field.UNIT).isEmpty()) {
      unitOfName(group, line).ifPresent(unit -> draft.unit(Field.VALUE, unit));
    }
  }

  /** A text right before a value, in a column of numbers, names that value alone. */
  private Optional<Heading> beside(Group group, int line) {
    int place = group.value().place() - 1;
    return columns.stream()
        .filter(column -> column.place() == place && column.isOfNumbers())
        .flatMap(column -> Optional.ofNullable(column.cells().get(line)).stream())
        .filter(cell -> cell.isText() && !grammar.isUnit(cell.text()))
        .flatMap(cell -> grammar.read(cell.text()).stream())
        .filter(label -> lines.direction() == Direction.ROWS)
        .findFirst();
  }

  /** What names the series that a mean is taken of. */
  private Optional<Labels.Label> series(Group group, int line) {
    TypedCell mean = group.value().cells().get(line);
    return mean == null
        ? Optional.empty()
        : surroundings.evaluation().references(mean.cell()).stream()
            .filter(range -> range.height() > 1 || range.width() > 1)
            .findFirst()
            .flatMap(range -> new Labels(surroundings).of(range));
  }

  /** Values in different units are different quantities, whatever stands above them. */
  private boolean isOfSeveralUnits(Group group) {
    return group.has(Field.QUANTITY)
        && group.column(Field.UNIT).stream()
                .flatMap(column -> column.texts().stream())
                .distinct()
                .count()
            > 1;
  }

  /** A value under its symbol in a table of one quantity a line is named by the line. */
  private boolean isBareSymbolBesideNames(Group group, Optional<Heading> heading) {
    return group.has(Field.QUANTITY)
        && groupsOfMeasurements() == 1
        && heading.filter(h -> !h.roles().isEmpty()).isPresent();
  }

  private long groupsOfMeasurements() {
    return groups.stream().filter(Group::hasUncertainty).count();
  }

  private Optional<String> unitOfName(Group group, int line) {
    return group
        .column(Field.QUANTITY)
        .map(column -> column.cells().get(line))
        .filter(TypedCell::isText)
        .flatMap(cell -> grammar.read(cell.text()))
        .map(Heading::unit)
        .filter(unit -> !unit.isEmpty());
  }
}
