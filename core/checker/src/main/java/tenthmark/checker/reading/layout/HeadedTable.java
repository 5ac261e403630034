package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** One table under its headings, or beside them. */
final class HeadedTable {

  private final Lines lines;
  private final Header header;
  private final List<Integer> body;
  private final Surroundings surroundings;
  private final HeadingGrammar grammar;
  private final List<Column> columns = new ArrayList<>();
  private final Map<Integer, Role> roles;
  private final List<Group> groups;
  private final TableLines told;
  private final OtherNumbers numbers;
  private final List<Draft> drafts = new ArrayList<>();
  private final Set<Integer> inside = new HashSet<>();

  HeadedTable(Lines lines, Header header, List<Integer> body, Surroundings surroundings) {
    this.lines = lines;
    this.header = header;
    this.body = body;
    this.surroundings = surroundings;
    this.grammar = surroundings.grammar();
    places().forEach(place -> columns.add(column(place)));
    columns.replaceAll(this::aboutSymbol);
    this.roles = new TreeMap<>(ColumnRoles.decide(columns, surroundings));
    partners();
    this.groups = Groups.of(columns, roles, surroundings);
    this.told = new TableLines(lines, grammar);
    this.numbers = new OtherNumbers(columns, roles, told);
  }

  /** The places of the headings, and of rows those without heading too. */
  private Set<Integer> places() {
    Set<Integer> places = new TreeSet<>(header.headings().keySet());
    if (lines.direction() == Direction.ROWS) {
      body.forEach(line -> places.addAll(lines.line(line).keySet()));
    }
    return places;
  }

  /** In "error in T" T is the temperature if another column has that symbol, not the tesla. */
  private Column aboutSymbol(Column column) {
    Optional<Heading> heading =
        column
            .heading()
            .filter(found -> found.mark() == Heading.Mark.SURE && found.name().isEmpty())
            .filter(found -> found.unit().length() == 1);
    boolean symbol =
        heading.isPresent()
            && columns.stream()
                .flatMap(other -> other.heading().stream())
                .filter(other -> other.mark() == Heading.Mark.NONE)
                .anyMatch(
                    other ->
                        other.symbol().equals(heading.get().unit())
                            && !other.unit().equals(heading.get().unit()));
    return symbol
        ? new Column(
            column.place(),
            heading.map(found -> found.about(found.unit())),
            column.headingCell(),
            column.cells())
        : column;
  }

  private Column column(int place) {
    NavigableMap<Integer, TypedCell> cells = new TreeMap<>();
    for (int line : body) {
      lines.at(line, place).ifPresent(cell -> cells.put(line, cell));
    }
    return new Column(
        place,
        Optional.ofNullable(header.headings().get(place)),
        Optional.ofNullable(header.cells().get(place)),
        cells);
  }

  /** A column without heading behind a sign, or under a heading for two, is the uncertainty. */
  private void partners() {
    for (int i = 1; i < columns.size(); i++) {
      Column column = columns.get(i);
      Column before = columns.get(i - 1);
      boolean unheaded = column.heading().isEmpty() || column.heading().get().text().equals("±");
      boolean afterSign =
          i > 1
              && before.isOfTexts()
              && before.texts().stream().allMatch(text -> text.equals("±") || text.equals("+/-"));
      boolean ofPair = before.heading().filter(Heading::pair).isPresent() && before.isOfNumbers();
      boolean signed = isShownSigned(column);
      if (column.isOfNumbers() && (unheaded && (afterSign || ofPair) || signed)) {
        roles.put(column.place(), Role.UNCERTAINTY);
      }
      if (signed && before.isOfNumbers() && roles.get(before.place()) == null) {
        roles.put(before.place(), Role.VALUE);
      }
      if (afterSign && column.isOfNumbers() && roles.get(columns.get(i - 2).place()) == null) {
        roles.put(columns.get(i - 2).place(), Role.VALUE);
      }
    }
  }

  /** Whether all its numbers are shown behind plus or minus. */
  private boolean isShownSigned(Column column) {
    return !column.numbers().isEmpty()
        && column.numbers().stream().allMatch(cell -> Shown.isSigned(lines.block().sheet(), cell));
  }

  /**
   * The table, if it has at least one column of which something is known. One line beside labels is
   * a form, unless the labels name the parts of a record.
   */
  Optional<Proposal> proposal() {
    if (lines.direction() == Direction.COLUMNS ? isForm() : isLabelledLineByLine()) {
      return Optional.empty();
    }
    if (groups.isEmpty() || body.isEmpty()) {
      return roles.isEmpty() ? Optional.empty() : Optional.of(proposal(List.of()));
    }
    names();
    ColumnCommons commons = new ColumnCommons(lines, body, roles, groups, surroundings, told);
    commons.inTable();
    commons.elsewhere();
    Optional<Integer> reasonLine =
        body.stream()
            .filter(line -> told.label(line).filter(h -> h.can(Role.RATIONALE)).isPresent())
            .filter(line -> lines.line(line).size() > 2 || groups.size() == 1)
            .findFirst();
    readLines(new TableDrafts(lines, header, columns, roles, groups, surroundings, reasonLine));
    numbers.find(drafts, inside);
    return Optional.of(proposal(drafts));
  }

  /** Where every line says again which of its numbers is the uncertainty, none is a heading. */
  private boolean isLabelledLineByLine() {
    return columns.stream()
        .filter(Column::isOfTexts)
        .anyMatch(
            column ->
                column.texts().stream()
                        .flatMap(text -> grammar.read(text).stream())
                        .filter(
                            heading ->
                                heading.mark() == Heading.Mark.SURE && TableLines.isBare(heading))
                        .count()
                    > 1);
  }

  private boolean isForm() {
    Set<Integer> withNumbers = new HashSet<>();
    columns.stream()
        .filter(column -> column.isOfNumbers() || column.isOfAmounts())
        .forEach(
            column ->
                column
                    .cells()
                    .forEach(
                        (line, cell) -> {
                          if (cell.mayBeNumber() || grammar.isAmount(cell.text())) {
                            withNumbers.add(line);
                          }
                        }));
    boolean parts =
        columns.stream()
            .flatMap(column -> column.heading().stream())
            .anyMatch(
                heading ->
                    heading.can(Role.VALUE)
                        && TableLines.isBare(heading)
                        && !heading.can(Role.READING));
    return withNumbers.size() <= 1 && !parts;
  }

  private Proposal proposal(List<Draft> found) {
    Map<CellAddress, Field> headings = new HashMap<>();
    for (Column column : columns) {
      Optional.ofNullable(roles.get(column.place()))
          .map(role -> role == Role.MEAN ? Role.VALUE : role)
          .flatMap(Field::of)
          .ifPresent(field -> column.headingCell().ifPresent(cell -> headings.put(cell, field)));
    }
    return new Proposal(
        found,
        area(),
        lines.direction(),
        headings,
        numbers.known(),
        numbers.strange(),
        evidence(found));
  }

  private CellRange area() {
    int left = columns.get(0).place();
    int right = columns.get(columns.size() - 1).place();
    int bottom = body.isEmpty() ? header.last() : body.get(body.size() - 1);
    String sheet = lines.block().sheet().name();
    return lines.direction().turned(new CellRange(sheet, left, header.first(), right, bottom));
  }

  private int evidence(List<Draft> found) {
    if (found.isEmpty()) {
      return 0;
    }
    int words =
        (int)
            columns.stream()
                .flatMap(column -> column.heading().stream())
                .filter(heading -> !heading.roles().isEmpty())
                .count();
    int units =
        (int)
            columns.stream()
                .flatMap(column -> column.heading().stream())
                .filter(heading -> !heading.unit().isEmpty())
                .count();
    int named = (int) groups.stream().filter(Group::isFoundByName).count();
    int lying = lines.direction() == Direction.ROWS ? 1 : 0;
    return 10 + 4 * words + units + 3 * named + 3 * found.size() + lying;
  }

  /** Where no heading names the quantity, the texts to the left of the values do. */
  private void names() {
    boolean named = groups.stream().anyMatch(group -> group.has(Field.QUANTITY));
    if (named || lines.direction() == Direction.COLUMNS) {
      return;
    }
    int first = groups.stream().mapToInt(group -> group.value().place()).min().orElse(0);
    columns.stream()
        .filter(column -> column.place() < first && column.isOfTexts())
        .filter(column -> isOfNames(roles.get(column.place())))
        .reduce((one, other) -> one)
        .ifPresent(column -> groups.forEach(group -> group.attach(Field.QUANTITY, column)));
  }

  private static boolean isOfNames(Role role) {
    return role == null || role == Role.RESULT || role == Role.INDEX || role == Role.APPARATUS;
  }

  private void readLines(TableDrafts records) {
    MeasuredLines measured =
        new MeasuredLines(lines, header, body, columns, groups, surroundings, drafts);
    int previous = header.last();
    boolean gap = false;
    for (int line : body) {
      gap |= line - previous > 1 && previous != header.last();
      previous = line;
      if (gap && !measured.goesOn(line)) {
        if (measured.isOutside(line)) {
          break;
        }
        continue;
      }
      if (!measured.isOfForm(line)) {
        inside.add(line);
        readLine(line, measured, records);
      }
    }
  }

  private void readLine(int line, MeasuredLines measured, TableDrafts records) {
    for (Group group : groups) {
      if (measured.isMeasurement(group, line, told.label(group, line))) {
        drafts.add(records.draft(group, line));
      }
    }
  }
}
