package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.formula.UncertaintyPairs;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.Qualifier;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.checker.unit.UnitReader;

/**
 * Joins each column of a table to the values that it is about: an uncertainty to the quantity that
 * it names, else to the values before it; a unit, a symbol, a reason to the nearest.
 */
final class Groups {

  private static final Set<Field> FOR_ALL = Set.of(Field.RATIONALE, Field.REMARK);

  private final List<Column> columns;
  private final Map<Integer, Role> roles;
  private final Evaluation evaluation;
  private final UncertaintyPairs pairs;
  private final List<Group> groups = new ArrayList<>();
  private final List<Column> left = new ArrayList<>();

  private Groups(List<Column> columns, Map<Integer, Role> roles, Surroundings surroundings) {
    this.columns = columns;
    this.roles = roles;
    this.evaluation = surroundings.evaluation();
    this.pairs = surroundings.pairs();
  }

  /** The groups of a table, one for each column of values. */
  static List<Group> of(List<Column> columns, Map<Integer, Role> roles, Surroundings surroundings) {
    Groups groups = new Groups(columns, roles, surroundings);
    groups.join();
    return groups.groups;
  }

  private void join() {
    columns.stream()
        .filter(column -> isOfValues(roles.get(column.place())))
        .forEach(column -> groups.add(new Group(column)));
    if (groups.isEmpty()) {
      return;
    }
    with(Role.UNCERTAINTY).sorted(Comparator.comparing(this::weakness)).forEach(this::uncertainty);
    for (Column column : columns) {
      Role role = roles.get(column.place());
      if (role != null && role != Role.UNCERTAINTY && !isOfValues(role)) {
        Field.of(role).ifPresent(field -> part(field, column));
      }
    }
    if (with(Role.UNCERTAINTY).findAny().isEmpty()) {
      groups.forEach(Group::takeOnlyContribution);
    }
  }

  private static boolean isOfValues(Role role) {
    return role == Role.VALUE || role == Role.MEAN;
  }

  private java.util.stream.Stream<Column> with(Role role) {
    return columns.stream().filter(column -> roles.get(column.place()) == role);
  }

  /** Formulas come first, then names, then places. */
  private int weakness(Column column) {
    return paired(column).isPresent() ? 0 : isNamed(column) ? 1 : 2;
  }

  /** The group whose values formulas say a column is the uncertainty of. */
  private Optional<Group> paired(Column column) {
    return groups.stream()
        .filter(group -> column.isPairedWith(group.value(), pairs))
        .findFirst()
        .or(
            () ->
                groups.stream().filter(group -> column.isPartOf(group.value(), pairs)).findFirst());
  }

  private boolean isNamed(Column column) {
    return !column.name().isEmpty() && target(column).isPresent();
  }

  /** The group whose quantity a column's heading names. */
  private Optional<Group> target(Column column) {
    List<Group> named =
        groups.stream()
            .filter(
                group ->
                    group
                        .value()
                        .heading()
                        .filter(heading -> Naming.matches(heading, column.name()))
                        .isPresent())
            .filter(group -> fits(group.value(), column))
            .toList();
    return named.stream()
        .filter(group -> column.place() > group.value().place())
        .max(Comparator.comparing(group -> group.value().place()))
        .or(() -> named.stream().findFirst());
  }

  private void uncertainty(Column column) {
    Optional<Group> named = column.name().isEmpty() ? Optional.empty() : target(column);
    named.ifPresent(Group::foundByName);
    Optional<Group> group =
        paired(column)
            .or(() -> named)
            .or(() -> adjacent(column))
            .or(
                () ->
                    nearest(column, other -> fits(other.value(), column) && isOpen(other, column)));
    group.ifPresent(found -> uncertainty(found, column));
  }

  /** The group of the values right before a column, if they have no uncertainty yet. */
  private Optional<Group> adjacent(Column column) {
    return groups.stream()
        .filter(group -> group.value().place() == column.place() - 1)
        .filter(group -> group.value().heading().isPresent())
        .filter(group -> fits(group.value(), column))
        .filter(group -> group.column(Field.UNCERTAINTY).isEmpty())
        .filter(
            group ->
                groups.stream()
                    .filter(other -> other.value().heading().filter(Groups::saysValue).isPresent())
                    .allMatch(other -> other == group || other.has(Field.UNCERTAINTY)))
        .findFirst();
  }

  private boolean isOpen(Group group, Column column) {
    return group.column(Field.UNCERTAINTY).isEmpty()
        || isRelative(group.column(Field.UNCERTAINTY).get()) != isRelative(column)
        || group.value().heading().filter(h -> h.can(Role.VALUE)).isPresent();
  }

  /** Of two uncertainties the absolute one counts, then the one that is computed from the other. */
  private void uncertainty(Group group, Column column) {
    Optional<Column> there = group.column(Field.UNCERTAINTY);
    if (there.filter(other -> other.isPairedWith(group.value(), pairs)).isPresent()) {
      left.add(column);
    } else if (there.isEmpty()) {
      group.attach(Field.UNCERTAINTY, column);
    } else if (isRelative(there.get()) && !isRelative(column)
        || isRelative(there.get()) == isRelative(column) && comesAfter(column, there.get())) {
      group.replace(Field.UNCERTAINTY, column);
      left.add(there.get());
    } else {
      left.add(column);
    }
  }

  private boolean comesAfter(Column later, Column earlier) {
    return later.heading().filter(h -> h.is(Qualifier.COMBINED)).isPresent()
        || later.refersTo(earlier, evaluation);
  }

  private boolean isRelative(Column column) {
    return column.heading().filter(Heading::isRelative).isPresent()
        || groups.stream().anyMatch(group -> column.isPartOf(group.value(), pairs));
  }

  /** Whether an uncertainty can be one of values: by its unit, and as it stands beside one. */
  private static boolean fits(Column value, Column uncertainty) {
    if (!value.meets(uncertainty)) {
      return false;
    }
    String of = uncertainty.unit();
    if (of.isEmpty() || value.unit().isEmpty() || of.equals("%")) {
      return true;
    }
    var one = UnitReader.STANDARD.read(of).known();
    var other = UnitReader.STANDARD.read(value.unit()).known();
    return one.isEmpty() || other.isEmpty() || one.get().to(other.get()).isPresent();
  }

  /** The nearest group to the left, else to the right. */
  private Optional<Group> nearest(Column column, java.util.function.Predicate<Group> condition) {
    List<Group> open = records();
    return open.stream()
        .filter(condition)
        .filter(group -> group.value().place() < column.place())
        .max(Comparator.comparing(group -> group.value().place()))
        .or(
            () ->
                open.stream()
                    .filter(condition)
                    .filter(group -> group.value().place() > column.place())
                    .min(Comparator.comparing(group -> group.value().place())));
  }

  /**
   * The groups that columns without a name belong to: in a table that says what is a value, or what
   * a quantity, those values alone.
   */
  private List<Group> records() {
    List<Group> said =
        groups.stream()
            .filter(
                group ->
                    group.has(Field.UNCERTAINTY)
                        || group.value().heading().filter(Groups::saysValue).isPresent())
            .toList();
    boolean value =
        said.stream()
            .anyMatch(group -> group.value().heading().filter(Groups::saysValue).isPresent());
    if (value) {
      return said;
    }
    Optional<Column> quantity =
        with(Role.QUANTITY).filter(column -> column.heading().isPresent()).findFirst();
    return quantity
        .flatMap(
            column ->
                groups.stream()
                    .filter(group -> group.value().place() > column.place())
                    .min(Comparator.comparing(group -> group.value().place())))
        .filter(group -> groups.stream().noneMatch(Group::isFoundByName))
        .map(List::of)
        .orElse(groups);
  }

  private static boolean saysValue(Heading heading) {
    return heading.can(Role.VALUE) && heading.name().isEmpty();
  }

  private void part(Field field, Column column) {
    if (FOR_ALL.contains(field)) {
      boolean several = with(field.role()).count() > 1;
      if (several) {
        nearest(column, group -> true).ifPresent(group -> group.attach(field, column));
      } else {
        groups.forEach(group -> group.attach(field, column));
      }
      return;
    }
    if (field == Field.QUANTITY || field == Field.SYMBOL) {
      naming(field, column);
      return;
    }
    if (field == Field.UNIT) {
      unit(column);
      return;
    }
    Optional<Group> named = column.name().isEmpty() ? Optional.empty() : target(column);
    named
        .or(
            () ->
                nearest(
                    column,
                    group -> (group.hasUncertainty() || isExplicit(group)) && !group.has(field)))
        .ifPresent(group -> group.attach(field, column));
  }

  /**
   * A unit in a column of its own is one of all values before it, back to the last such column,
   * whose heading states none; else of those behind it, up to the next.
   */
  private void unit(Column column) {
    int last =
        with(Role.UNIT)
            .mapToInt(Column::place)
            .filter(place -> place < column.place())
            .max()
            .orElse(-1);
    int next =
        with(Role.UNIT)
            .mapToInt(Column::place)
            .filter(place -> place > column.place())
            .min()
            .orElse(Integer.MAX_VALUE);
    List<Group> before = withoutUnit(last, column.place());
    (before.isEmpty() ? withoutUnit(column.place(), next) : before)
        .forEach(group -> group.attach(Field.UNIT, column));
  }

  private List<Group> withoutUnit(int after, int before) {
    return groups.stream()
        .filter(group -> group.value().unit().isEmpty() && !group.has(Field.UNIT))
        .filter(group -> group.value().place() > after && group.value().place() < before)
        .toList();
  }

  private boolean isExplicit(Group group) {
    return groups.size() == 1
        || group.value().heading().filter(heading -> heading.can(Role.VALUE)).isPresent();
  }

  /** One name for all that stands in a line, or the nearest to the left where there are several. */
  private void naming(Field field, Column column) {
    if (with(field.role()).count() == 1) {
      groups.forEach(group -> group.attach(field, column));
      return;
    }
    Optional<Column> next =
        with(field.role()).filter(other -> other.place() > column.place()).findFirst();
    boolean valueBetween =
        groups.stream()
            .anyMatch(
                group ->
                    group.value().place() > column.place()
                        && next.map(other -> group.value().place() < other.place()).orElse(true));
    if (valueBetween) {
      groups.stream()
          .filter(group -> group.value().place() > column.place())
          .filter(group -> next.map(other -> group.value().place() < other.place()).orElse(true))
          .forEach(group -> group.attach(field, column));
    } else {
      nearest(column, group -> !group.has(field)).ifPresent(group -> group.attach(field, column));
    }
  }
}
