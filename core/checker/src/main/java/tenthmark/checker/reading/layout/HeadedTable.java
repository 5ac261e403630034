package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.block.Direction;
import tenthmark.checker.reading.block.Lines;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** One table under its headings, or beside them. */
final class HeadedTable {

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
  private final Surroundings surroundings;
  private final HeadingGrammar grammar;
  private final List<Column> columns = new ArrayList<>();
  private final Map<Integer, Role> roles;
  private final List<Group> groups;
  private final Map<CellAddress, NumberRole> numbers = new HashMap<>();
  private final Map<CellAddress, String> strange = new HashMap<>();
  private final List<Draft> drafts = new ArrayList<>();
  private final Set<Integer> inside = new HashSet<>();
  private Optional<Integer> reasonLine = Optional.empty();

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
      if (unheaded && column.isOfNumbers() && (afterSign || ofPair)) {
        roles.put(column.place(), Role.UNCERTAINTY);
      }
      if (afterSign && column.isOfNumbers() && roles.get(columns.get(i - 2).place()) == null) {
        roles.put(columns.get(i - 2).place(), Role.VALUE);
      }
    }
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
    commons();
    statedElsewhere();
    reasonLine =
        body.stream()
            .filter(line -> label(line).filter(h -> h.can(Role.RATIONALE)).isPresent())
            .filter(line -> lines.line(line).size() > 2 || groups.size() == 1)
            .findFirst();
    readLines();
    numbersBesides();
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
                        .filter(heading -> heading.mark() == Heading.Mark.SURE && isBare(heading))
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
                    heading.can(Role.VALUE) && isBare(heading) && !heading.can(Role.READING));
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
        found, area(), lines.direction(), headings, numbers, strange, evidence(found));
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

  /** One uncertainty for a whole column: in its first cell, or in a line of its own. */
  private void commons() {
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
  private void statedElsewhere() {
    for (Group group : groups) {
      boolean open =
          !group.hasUncertainty()
              && roles.get(group.value().place()) == Role.VALUE
              && group.value().isOfNumbers()
              && group.value().isMostlyTyped();
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

  /** A line that a label calls the uncertainty of all above, unless it is one of a mean. */
  private boolean isUncertaintyOfColumns(int line) {
    boolean mean =
        body.stream().anyMatch(other -> label(other).filter(h -> h.can(Role.MEAN)).isPresent());
    Integer before = body.indexOf(line) > 0 ? body.get(body.indexOf(line) - 1) : null;
    boolean besideNumbers = before == null || label(before).isEmpty();
    return !mean && besideNumbers && isUncertaintyLine(line) && isBare(label(line).orElseThrow());
  }

  private static boolean isBare(Heading label) {
    return label.name().isEmpty();
  }

  private boolean isUncertaintyLine(int line) {
    return label(line)
        .filter(
            heading ->
                heading.can(Role.UNCERTAINTY) && heading.roles().size() == 1
                    || heading.mark() == Heading.Mark.SURE)
        .isPresent();
  }

  /** The first text of a line that stands left of its values. */
  private Optional<Heading> label(int line) {
    return lines.line(line).values().stream()
        .findFirst()
        .filter(TypedCell::isText)
        .flatMap(cell -> grammar.read(cell.text()));
  }

  /**
   * A line with a sign in it, where the table has no column of signs, says itself what it holds.
   */
  private boolean isOfForm(int line) {
    return lines.direction() == Direction.ROWS
        && columns.stream()
            .filter(Column::isOfNumbers)
            .flatMap(column -> Optional.ofNullable(column.cells().get(line)).stream())
            .anyMatch(Forms::isSign);
  }

  /** What names a record: its quantity, else the first text of its line. */
  private Optional<Heading> label(Group group, int line) {
    return group
        .column(Field.QUANTITY)
        .map(column -> column.cells().get(line))
        .filter(TypedCell::isText)
        .flatMap(cell -> grammar.read(cell.text()))
        .or(() -> label(line));
  }

  private void readLines() {
    int previous = header.last();
    boolean gap = false;
    for (int line : body) {
      gap |= line - previous > 1 && previous != header.last();
      previous = line;
      if (gap && !goesOn(line)) {
        if (isOutside(line)) {
          break;
        }
        continue;
      }
      if (!isOfForm(line)) {
        inside.add(line);
        readLine(line);
      }
    }
  }

  /** After a gap, a line with a value alone may be a calculation. */
  private boolean goesOn(int line) {
    return groups.stream()
        .anyMatch(
            group ->
                group.value().cells().containsKey(line)
                    && isNamedAsOthers(group, line)
                    && (filled(group, Field.UNIT, line)
                        || isSized(group, Field.UNCERTAINTY, line)
                        || Field.CONTRIBUTIONS.stream()
                            .anyMatch(field -> isSized(group, field, line))));
  }

  /** Where every record so far has a symbol, one without belongs elsewhere. */
  private boolean isNamedAsOthers(Group group, int line) {
    boolean always =
        group.has(Field.SYMBOL)
            && !drafts.isEmpty()
            && drafts.stream().allMatch(draft -> filled(group, Field.SYMBOL, draft.line()));
    return !always || filled(group, Field.SYMBOL, line);
  }

  private boolean isOutside(int line) {
    return groups.stream().anyMatch(group -> group.value().cells().containsKey(line))
        && groups.stream().noneMatch(group -> filled(group, Field.UNIT, line));
  }

  private boolean isSized(Group group, Field field, int line) {
    return group
        .column(field)
        .map(column -> column.cells().get(line))
        .filter(cell -> cell.mayBeNumber() || Column.isAmount(cell.text()))
        .isPresent();
  }

  private boolean filled(Group group, Field field, int line) {
    return group
        .column(field)
        .map(Column::cells)
        .filter(cells -> cells.containsKey(line))
        .isPresent();
  }

  private void readLine(int line) {
    for (Group group : groups) {
      if (isMeasurement(group, line, label(group, line))) {
        drafts.add(draft(group, line));
      }
    }
  }

  private boolean isMeasurement(Group group, int line, Optional<Heading> label) {
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
    return filled(group, Field.QUANTITY, line)
        && (isTypedNumber(group, Field.UNCERTAINTY, line)
            || Field.CONTRIBUTIONS.stream().anyMatch(field -> isTypedNumber(group, field, line)));
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
        && !filled(group, Field.RATIONALE, line)
        && !filled(group, Field.UNCERTAINTY, line)
        && Field.CONTRIBUTIONS.stream().noneMatch(field -> filled(group, field, line))
        && group.value().cells().keySet().stream()
                .filter(other -> filled(group, Field.UNCERTAINTY, other))
                .filter(other -> filled(group, Field.RATIONALE, other))
                .count()
            > 1;
  }

  private static boolean hasDigit(String text) {
    return text.chars().anyMatch(Character::isDigit);
  }

  private boolean isTypedNumber(Group group, Field field, int line) {
    return group
        .column(field)
        .map(column -> column.cells().get(line))
        .filter(cell -> cell.isTyped() && cell.number() != 0)
        .isPresent();
  }

  private boolean isOfNoMeasurement(Heading label, Group group, int line) {
    boolean own = filled(group, Field.UNCERTAINTY, line);
    if (isUncertaintyLine(line) || label.can(Role.STATISTIC) && label.name().isEmpty()) {
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
        || body.stream().anyMatch(this::isUncertaintyLine)
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

  private Draft draft(Group group, int line) {
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
    boolean relative =
        column.heading().filter(Heading::isRelative).isPresent()
            || column.isPartOf(group.value(), surroundings.pairs());
    if (field == Field.UNCERTAINTY && relative && column.unit().isEmpty()) {
      return "1";
    }
    return column.unit();
  }

  /** The quantity: of its own column, else of the heading. */
  private void name(Group group, int line, Draft draft) {
    Optional<Heading> heading = group.value().heading();
    String name = heading.map(Heading::name).orElse("");
    Optional<Heading> named = group.column(Field.QUANTITY).flatMap(Column::heading);
    boolean ownColumn = named.filter(h -> h.can(Role.QUANTITY)).isPresent();
    boolean own = filled(group, Field.QUANTITY, line);
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

  /** What the numbers are that are no part of a record. */
  private void numbersBesides() {
    Set<CellAddress> parts = new HashSet<>();
    drafts.forEach(draft -> parts.addAll(draft.places().values()));
    for (Column column : columns) {
      for (Map.Entry<Integer, TypedCell> entry : column.cells().entrySet()) {
        TypedCell cell = entry.getValue();
        if (cell.isNumber() && inside.contains(entry.getKey()) && !parts.contains(cell.address())) {
          role(column, entry.getKey(), cell);
        }
      }
    }
  }

  private void role(Column column, int line, TypedCell cell) {
    Optional<NumberRole> byLabel = label(line).flatMap(heading -> NumberRoles.of(heading.roles()));
    Role role = roles.get(column.place());
    Optional<NumberRole> byHeading = role == null ? Optional.empty() : NumberRoles.of(Set.of(role));
    Optional<NumberRole> found =
        byLabel
            .filter(label -> label != NumberRole.INDEX && label != NumberRole.DATE)
            .or(() -> byHeading)
            .or(() -> cell.isFormula() ? Optional.of(NumberRole.CALCULATED) : Optional.empty());
    if (found.isPresent()) {
      numbers.put(cell.address(), found.get());
    } else if (role == Role.VALUE || role == Role.MEAN) {
      if (!column.unit().isEmpty()) {
        numbers.put(cell.address(), NumberRole.RAW);
      } else {
        strange.put(cell.address(), column.heading().map(Heading::text).orElse(""));
      }
    } else if (role != null) {
      numbers.put(cell.address(), NumberRole.CALCULATED);
    } else {
      strange.put(cell.address(), column.heading().map(Heading::text).orElse(""));
    }
  }

  /** The lines of the table, for tests. */
  List<Integer> body() {
    return Collections.unmodifiableList(body);
  }
}
