package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;

/** Which lines of a table hold measurements, and where it ends. */
final class MeasuredLines {

  /** What a table must have besides values so that each of them is a measurement. */
  private static final Set<Field> TELLING =
      Set.of(
          Field.UNCERTAINTY,
          Field.DIVISION,
          Field.RESOLUTION,
          Field.RATIONALE,
          Field.PHYSICAL,
          Field.REPEAT);

  private static final Set<Role> OF_NO_MEASUREMENT =
      Set.of(
          Role.COMPARISON, Role.ACCEPTED, Role.STATISTIC, Role.COUNT, Role.SUMMARY, Role.CONSTANT);

  private final Lines lines;
  private final Header header;
  private final List<Integer> body;
  private final List<Column> ofNumbers;
  private final List<Group> groups;
  private final Surroundings surroundings;
  private final HeadingGrammar grammar;
  private final TableLines told;
  private final List<Draft> drafts;

  MeasuredLines(
      Lines lines,
      Header header,
      List<Integer> body,
      List<Column> columns,
      List<Group> groups,
      Surroundings surroundings,
      List<Draft> drafts) {
    this.lines = lines;
    this.header = header;
    this.body = body;
    this.ofNumbers = columns.stream().filter(Column::isOfNumbers).toList();
    this.groups = groups;
    this.surroundings = surroundings;
    this.grammar = surroundings.grammar();
    this.told = new TableLines(lines, grammar);
    this.drafts = drafts;
  }

  boolean isMeasurement(Group group, int line, Optional<Heading> label) {
    if (group
            .common()
            .filter(
                common ->
                    lines.direction().line(common.cell()) == line
                        && lines.direction().place(common.cell()) == group.value().place())
            .isPresent()
        || isPartOfMatrix(group, line)) {
      return false;
    }
    if (label.filter(heading -> isOfNoMeasurement(heading, group, line)).isPresent()
        || isGivenBesideMeasured(group, line)) {
      return false;
    }
    if (isCounted(group, line)) {
      return false;
    }
    TypedCell value = group.value().cells().get(line);
    if (value != null && surroundings.pairs().isExtreme(value.address())) {
      return false;
    }
    if (value != null && isPaired(value)) {
      return true;
    }
    if (!isOfMeasurements(group)) {
      return false;
    }
    if (value != null && group.isOnlyTyped() && !value.isTyped()) {
      return false;
    }
    if (value != null) {
      return value.mayBeNumber() || Column.isAmount(value.text()) && hasDigit(value.text());
    }
    return told.filled(group, Field.QUANTITY, line)
        && (told.isTypedNumber(group, Field.UNCERTAINTY, line)
            || Field.CONTRIBUTIONS.stream()
                .anyMatch(field -> told.isTypedNumber(group, field, line)));
  }

  /**
   * A line with a sign in it, where the table has no column of signs, says itself what it holds.
   */
  boolean isOfForm(int line) {
    return lines.direction() == Direction.ROWS
        && ofNumbers.stream()
            .flatMap(column -> Optional.ofNullable(column.cells().get(line)).stream())
            .anyMatch(Forms::isSign);
  }

  /** After a gap, a line with a value alone may be a calculation. */
  boolean goesOn(int line) {
    return groups.stream()
        .anyMatch(
            group ->
                group.value().cells().containsKey(line)
                    && isNamedAsOthers(group, line)
                    && (told.filled(group, Field.UNIT, line)
                        || told.isSized(group, Field.UNCERTAINTY, line)
                        || Field.CONTRIBUTIONS.stream()
                            .anyMatch(field -> told.isSized(group, field, line))));
  }

  /** Where every record so far has a symbol, one without belongs elsewhere. */
  private boolean isNamedAsOthers(Group group, int line) {
    boolean always =
        group.has(Field.SYMBOL)
            && !drafts.isEmpty()
            && drafts.stream().allMatch(draft -> told.filled(group, Field.SYMBOL, draft.line()));
    return !always || told.filled(group, Field.SYMBOL, line);
  }

  boolean isOutside(int line) {
    return groups.stream().anyMatch(group -> group.value().cells().containsKey(line))
        && groups.stream().noneMatch(group -> told.filled(group, Field.UNIT, line));
  }

  /** Whether a word in place of the unit or the uncertainty says that a number is exact. */
  private boolean isCounted(Group group, int line) {
    return Stream.of(Field.UNIT, Field.UNCERTAINTY)
        .flatMap(field -> group.column(field).stream())
        .flatMap(column -> Optional.ofNullable(column.cells().get(line)).stream())
        .anyMatch(cell -> cell.isText() && grammar.vocabulary().says(Notion.EXACT, cell.text()));
  }

  /** Whether a formula says what the uncertainty of a value is, wherever that stands. */
  private boolean isPaired(TypedCell value) {
    return value.isNumber() && surroundings.pairs().uncertainty(value.address()).isPresent();
  }

  /**
   * Where all others have an uncertainty and a reason, a typed value with neither is a given one;
   * so is a bare number among values that are written with their uncertainties.
   */
  private boolean isGivenBesideMeasured(Group group, int line) {
    TypedCell value = group.value().cells().get(line);
    if (value == null || !value.mayBeNumber()) {
      return false;
    }
    if (group.value().isOfStatedResults() && !group.has(Field.UNCERTAINTY)) {
      return true;
    }
    return value.isTyped()
        && group.has(Field.RATIONALE)
        && group.has(Field.UNCERTAINTY)
        && !told.filled(group, Field.RATIONALE, line)
        && !told.filled(group, Field.UNCERTAINTY, line)
        && Field.CONTRIBUTIONS.stream().noneMatch(field -> told.filled(group, field, line))
        && group.value().cells().keySet().stream()
                .filter(other -> told.filled(group, Field.UNCERTAINTY, other))
                .filter(other -> told.filled(group, Field.RATIONALE, other))
                .count()
            > 1;
  }

  private static boolean hasDigit(String text) {
    return text.chars().anyMatch(Character::isDigit);
  }

  private boolean isOfNoMeasurement(Heading label, Group group, int line) {
    boolean own = told.filled(group, Field.UNCERTAINTY, line);
    if (told.isUncertaintyLine(line) || label.can(Role.STATISTIC) && label.name().isEmpty()) {
      return !own
          || lines.direction() == Direction.ROWS
              && group.value().heading().filter(h -> h.isOfQuantity()).isPresent();
    }
    boolean none = label.roles().stream().anyMatch(OF_NO_MEASUREMENT::contains);
    if (!none || own && !label.can(Role.ACCEPTED)) {
      return false;
    }
    return label.name().isEmpty()
        || label.roles().equals(Set.of(Role.COMPARISON))
        || label.roles().equals(Set.of(Role.ACCEPTED))
        || label.roles().equals(Set.of(Role.STATISTIC))
        || label.roles().stream().allMatch(role -> role == Role.COUNT || role == Role.CYCLES);
  }

  /** Whether the values of a group are measurements, told by what belongs to them. */
  private boolean isOfMeasurements(Group group) {
    boolean explicit = group.value().heading().filter(h -> h.can(Role.VALUE)).isPresent();
    if (group.hasUncertainty()) {
      return explicit || !group.isOnlyOfContributions() || group.areContributionsSmall();
    }
    if (!explicit
        || body.stream().anyMatch(told::isUncertaintyLine)
        || groups.stream().anyMatch(Group::hasUncertainty)) {
      return false;
    }
    boolean telling = TELLING.stream().anyMatch(group::has);
    boolean named =
        group
            .column(Field.QUANTITY)
            .flatMap(Column::heading)
            .filter(h -> h.can(Role.QUANTITY) && !h.can(Role.CONSTANT))
            .isPresent();
    boolean unit = group.has(Field.UNIT);
    return telling || named && unit && !isGiven();
  }

  /** Whether the sheet or a title says that the values are given. */
  private boolean isGiven() {
    if (ColumnRoles.isGiven(grammar, lines.block().sheet().name())) {
      return true;
    }
    for (int line = header.first() - 1; line >= header.first() - 2; line--) {
      if (lines.line(line).values().stream()
          .anyMatch(cell -> cell.isText() && ColumnRoles.isGiven(grammar, cell.text()))) {
        return true;
      }
    }
    return false;
  }

  /** A matrix over several columns is what one function says, not what a student wrote down. */
  private boolean isPartOfMatrix(Group group, int line) {
    TypedCell value = group.value().cells().get(line);
    return value != null
        && value
            .formula()
            .flatMap(formula -> formula.array())
            .filter(area -> area.right() > area.left() || area.bottom() > area.top())
            .isPresent();
  }
}
