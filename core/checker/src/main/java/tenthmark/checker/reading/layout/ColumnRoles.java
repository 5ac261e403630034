package tenthmark.checker.reading.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.reading.words.HeadingGrammar;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Role;

/**
 * Decides what each column of a table is. The words of a heading say what it can be; what stands
 * beneath and beside decides where that is more than one thing: an instrument is a name or a
 * contribution, a reading a value or a contribution, a measurement a value or the number of a line.
 */
final class ColumnRoles {

  /** What a contribution to an uncertainty is called. */
  static final List<Role> CONTRIBUTIONS =
      List.of(Role.READING, Role.PHYSICAL, Role.INSTRUMENT, Role.TIMING, Role.REPEAT);

  /** What a number with a unit is not. */
  private static final Set<Role> WITHOUT_UNIT =
      Set.of(Role.INDEX, Role.COUNT, Role.CYCLES, Role.DATE, Role.ENDS);

  private static final List<Role> ORDER_OF_BLANKS =
      List.of(
          Role.RATIONALE,
          Role.VALUE,
          Role.UNCERTAINTY,
          Role.UNIT,
          Role.SYMBOL,
          Role.REMARK,
          Role.RESULT,
          Role.DIVISION,
          Role.SPACING,
          Role.ENDS,
          Role.RESOLUTION,
          Role.CYCLES,
          Role.REACTION,
          Role.HAND_TIMING,
          Role.MEAN);

  private final List<Column> columns;
  private final Evaluation evaluation;
  private final HeadingGrammar grammar;
  private final UncertainMarks marks;
  private final Map<Integer, Role> roles = new TreeMap<>();

  private ColumnRoles(List<Column> columns, Surroundings surroundings) {
    this.columns = columns;
    this.evaluation = surroundings.evaluation();
    this.grammar = surroundings.grammar();
    this.marks = new UncertainMarks(columns, evaluation);
  }

  /**
   * The role of each column by place. A column of numbers whose heading names a quantity and
   * nothing else has the role of a value; one of which nothing is known is left out.
   */
  static Map<Integer, Role> decide(List<Column> columns, Surroundings surroundings) {
    ColumnRoles decision = new ColumnRoles(columns, surroundings);
    columns.forEach(decision::decide);
    decision.partnered();
    decision.specifications();
    new FormulaRoles(columns, decision.roles, surroundings).decide();
    decision.findValue();
    return decision.roles;
  }

  /** What a maker states in percent beside the uncertainties that follow from it is no part. */
  private void specifications() {
    boolean total =
        columns.stream()
            .anyMatch(
                column -> roles.get(column.place()) == Role.UNCERTAINTY && !column.isInPercent());
    columns.stream()
        .filter(column -> total && roles.get(column.place()) == Role.INSTRUMENT)
        .filter(Column::isInPercent)
        .forEach(column -> roles.put(column.place(), Role.SPECIFICATION));
  }

  /**
   * Where one and the same heading of an uncertainty stands behind several columns of numbers, each
   * of these is a value, whatever else its words may mean.
   */
  private void partnered() {
    Map<String, List<Column>> behind = new HashMap<>();
    for (int i = 1; i < columns.size(); i++) {
      if (isBareUncertainty(columns.get(i)) && isPartnerOf(columns.get(i - 1), columns.get(i))) {
        behind
            .computeIfAbsent(wording(columns.get(i)), none -> new ArrayList<>())
            .add(columns.get(i - 1));
      }
    }
    behind.values().stream()
        .filter(values -> values.size() > 1)
        .flatMap(List::stream)
        .filter(column -> roles.get(column.place()) != Role.MEAN)
        .forEach(column -> roles.put(column.place(), Role.VALUE));
  }

  private boolean isBareUncertainty(Column column) {
    return column.isOfNumbers()
        && column.name().isEmpty()
        && roles.get(column.place()) == Role.UNCERTAINTY;
  }

  private static boolean isPartnerOf(Column value, Column uncertainty) {
    return uncertainty.place() == value.place() + 1
        && value.isOfNumbers()
        && value.heading().filter(h -> h.mark() == Heading.Mark.NONE).isPresent()
        && (uncertainty.unit().isEmpty()
            || UncertainMarks.sameUnit(value.unit(), uncertainty.unit()));
  }

  /** A heading's words without its unit. */
  private static String wording(Column column) {
    return column
        .heading()
        .map(heading -> heading.text().replace(heading.unit(), "").strip())
        .orElse("");
  }

  private void decide(Column column) {
    Optional<Role> role =
        column.isOfTexts()
            ? ofTexts(column)
            : column.isOfNumbers() ? ofNumbers(column) : ofNothing(column);
    role.ifPresent(found -> roles.put(column.place(), found));
  }

  /** A column that waits for its numbers has the one role that its heading names. */
  private Optional<Role> ofNothing(Column column) {
    return column
        .heading()
        .flatMap(
            heading ->
                heading.isOfQuantity() && !heading.unit().isEmpty()
                    ? Optional.of(Role.VALUE)
                    : heading.mark() == Heading.Mark.NONE || heading.canBeOneOf(CONTRIBUTIONS)
                        ? first(heading, CONTRIBUTIONS)
                            .filter(role -> !heading.can(Role.VALUE) || hasOtherValue(column))
                            .or(() -> first(heading, ORDER_OF_BLANKS))
                        : Optional.of(Role.UNCERTAINTY));
  }

  private static Optional<Role> first(Heading heading, List<Role> order) {
    return order.stream().filter(heading::can).findFirst();
  }

  private Optional<Role> ofTexts(Column column) {
    if (column.heading().isEmpty()) {
      return units(column);
    }
    Heading heading = column.heading().get();
    if (heading.roles().equals(Set.of(Role.UNIT))) {
      return Optional.of(Role.UNIT);
    }
    if (heading.can(Role.HAND_TIMING) && !hasDigits(column)) {
      return Optional.of(Role.HAND_TIMING);
    }
    if (heading.can(Role.RESULT) && column.isOfStatedResults() && hasOtherValue(column)) {
      return Optional.of(Role.RESULT);
    }
    if (heading.mark() == Heading.Mark.SURE && column.isOfAmounts()) {
      return Optional.of(uncertain(column, heading));
    }
    if (column.isOfAmounts() && (!heading.can(Role.RESULT) || !hasOtherValue(column))) {
      return amounts(column, heading);
    }
    Optional<Role> role =
        first(
            heading,
            List.of(
                Role.RATIONALE,
                Role.UNIT,
                Role.SYMBOL,
                Role.QUANTITY,
                Role.SPACING,
                Role.HAND_TIMING,
                Role.REMARK,
                Role.RESULT,
                Role.APPARATUS,
                Role.INDEX,
                Role.DATE));
    if (role.isPresent()) {
      return role;
    }
    if (heading.can(Role.VALUE) || !heading.canBeOneOf(CONTRIBUTIONS) || isOfNames(column)) {
      return units(column);
    }
    return first(heading, CONTRIBUTIONS);
  }

  /** Texts left of all numbers name what is measured. */
  private boolean isOfNames(Column column) {
    return column.texts().stream().noneMatch(Column::isAmount)
        && others(column).filter(Column::isOfNumbers).allMatch(o -> o.place() > column.place());
  }

  private Optional<Role> units(Column column) {
    return column.texts().stream().allMatch(grammar::isUnit)
        ? Optional.of(Role.UNIT)
        : Optional.empty();
  }

  /** Texts such as 0,5 mm and none are numbers for all that is read. */
  private Optional<Role> amounts(Column column, Heading heading) {
    return heading.isOfQuantity() && !column.isOfStatedResults() && !hasDigits(column)
        ? Optional.empty()
        : numbers(column, heading);
  }

  private static boolean hasDigits(Column column) {
    return column.texts().stream().anyMatch(text -> text.chars().anyMatch(Character::isDigit));
  }

  private boolean hasOtherValue(Column column) {
    return columns.stream()
        .filter(other -> other.place() != column.place())
        .filter(other -> other.isOfNumbers() || other.isOfAmounts())
        .flatMap(other -> other.heading().stream())
        .anyMatch(
            heading ->
                heading.mark() == Heading.Mark.NONE
                    && (heading.can(Role.VALUE) && !heading.canBeOneOf(CONTRIBUTIONS)
                        || heading.can(Role.MEAN)
                        || heading.isOfQuantity()));
  }

  private Optional<Role> ofNumbers(Column column) {
    return column.heading().isPresent()
        ? numbers(column, column.heading().get())
        : column.isSequence() && column.numbers().size() > 1
            ? Optional.of(Role.INDEX)
            : Optional.empty();
  }

  private Optional<Role> numbers(Column column, Heading heading) {
    if (heading.mark() == Heading.Mark.SURE) {
      return Optional.of(uncertain(column, heading));
    }
    if (heading.mark() == Heading.Mark.DELTA) {
      return Optional.of(
          marks.isOfAnother(column, heading) && !marks.hasOwnUncertainty(column)
              ? Role.UNCERTAINTY
              : Role.VALUE);
    }
    if (marks.isNamedByDelta(column, heading)
        || heading.can(Role.COMPARISON) && isInUnit(heading) && marks.hasOwnUncertainty(column)) {
      return Optional.of(Role.VALUE);
    }
    if (heading.roles().isEmpty()) {
      boolean counting =
          heading.unit().isEmpty() && column.isSequence() && column.numbers().size() > 2;
      return Optional.of(
          marks.isPrefixed(column, heading) || marks.isLoneMark(column, heading)
              ? Role.UNCERTAINTY
              : counting && column.isTyped() ? Role.INDEX : Role.VALUE);
    }
    if (heading.canBeOneOf(CONTRIBUTIONS)
        && !heading.name().isEmpty()
        && !heading.can(Role.VALUE)
        && !isReferredToAsContribution(column)
        && hasPlain(column, heading)) {
      return Optional.of(Role.CONSTANT);
    }
    boolean dimensional = isInUnit(heading);
    if (dimensional && WITHOUT_UNIT.containsAll(heading.roles())) {
      return Optional.of(Role.VALUE);
    }
    if (heading.roles().size() == 1) {
      return Optional.of(single(column, heading));
    }
    return Optional.of(oneOf(column, heading, dimensional));
  }

  private static boolean isInUnit(Heading heading) {
    return !heading.unit().isEmpty() && !heading.unit().equals("%") && !heading.unit().equals("1");
  }

  /** A contribution if it names one, the total else; or what merely sounds like it. */
  private Role uncertain(Column column, Heading heading) {
    if (heading.can(Role.COMPARISON)) {
      return hasAccepted() ? Role.COMPARISON : Role.UNCERTAINTY;
    }
    if (heading.can(Role.SUMMARY)) {
      return hasContributions(column) ? Role.UNCERTAINTY : Role.SUMMARY;
    }
    if (heading.can(Role.ACCEPTED) || heading.can(Role.RATIONALE)) {
      return heading.roles().iterator().next();
    }
    return first(heading, CONTRIBUTIONS).orElse(Role.UNCERTAINTY);
  }

  private Role single(Column column, Heading heading) {
    Role role = heading.roles().iterator().next();
    return switch (role) {
      case QUANTITY, RESULT, APPARATUS -> Role.VALUE;
      case COUNT, INDEX -> column.isWhole() ? role : Role.VALUE;
      default -> role;
    };
  }

  private Role oneOf(Column column, Heading heading, boolean dimensional) {
    if (heading.can(Role.COMPARISON) && heading.can(Role.UNCERTAINTY)) {
      return hasAccepted() ? Role.COMPARISON : Role.UNCERTAINTY;
    }
    if (heading.can(Role.INDEX) && column.isSequence() && !dimensional) {
      return Role.INDEX;
    }
    if (heading.can(Role.COUNT) && column.isWhole() && !dimensional) {
      return heading.can(Role.CYCLES) && isRecordTable() ? Role.CYCLES : Role.COUNT;
    }
    if (heading.can(Role.UNCERTAINTY) && heading.can(Role.SUMMARY)) {
      return hasContributions(column) ? Role.UNCERTAINTY : Role.SUMMARY;
    }
    if (heading.can(Role.REACTION) && heading.can(Role.TIMING)) {
      return isReferredToAsContribution(column) || !hasOnly(Role.TIMING) && isRecordTable()
          ? Role.TIMING
          : Role.REACTION;
    }
    Optional<Role> contribution = first(heading, CONTRIBUTIONS);
    if (contribution.isPresent() && heading.can(Role.VALUE)) {
      return hasOtherValue(column) || isOfBudget() ? contribution.get() : Role.VALUE;
    }
    if (heading.can(Role.DIVISION)) {
      return Role.DIVISION;
    }
    if (heading.can(Role.RESOLUTION)) {
      return hasOtherValue(column) || !heading.can(Role.VALUE) ? Role.RESOLUTION : Role.VALUE;
    }
    if (heading.can(Role.STATISTIC)) {
      return contribution.isPresent() && isReferredToAsContribution(column)
          ? contribution.get()
          : Role.STATISTIC;
    }
    if (contribution.isPresent()) {
      return contribution.get();
    }
    return first(
            heading,
            List.of(
                Role.MEAN,
                Role.VALUE,
                Role.UNCERTAINTY,
                Role.ACCEPTED,
                Role.COMPARISON,
                Role.CONSTANT,
                Role.CYCLES,
                Role.REACTION,
                Role.ENDS,
                Role.SPACING,
                Role.SPECIFICATION))
        .orElse(Role.VALUE);
  }

  /** A list of contributions without any value. */
  private boolean isOfBudget() {
    return any(
            heading ->
                heading.canBeOneOf(CONTRIBUTIONS)
                    && !heading.can(Role.VALUE)
                    && !heading.can(Role.STATISTIC))
        && !any(heading -> heading.can(Role.UNCERTAINTY) || heading.mark() != Heading.Mark.NONE);
  }

  private boolean hasAccepted() {
    return any(heading -> heading.can(Role.ACCEPTED));
  }

  private boolean hasOnly(Role role) {
    return any(heading -> heading.roles().equals(Set.of(role)));
  }

  /** Whether the table says in words what is a value, so that its lines are the records. */
  private boolean isRecordTable() {
    return any(heading -> heading.can(Role.VALUE) && heading.name().isEmpty());
  }

  private boolean any(java.util.function.Predicate<Heading> condition) {
    return columns.stream().flatMap(column -> column.heading().stream()).anyMatch(condition);
  }

  /** Whether another column can be a contribution, so that this one may be their total. */
  private boolean hasContributions(Column total) {
    return others(total)
        .flatMap(other -> other.heading().stream())
        .anyMatch(heading -> heading.canBeOneOf(CONTRIBUTIONS) && !heading.can(Role.STATISTIC));
  }

  /** Whether another column has the same role and no words besides. */
  private boolean hasPlain(Column column, Heading heading) {
    return others(column)
        .flatMap(other -> other.heading().stream())
        .anyMatch(
            other ->
                other.name().isEmpty()
                    && CONTRIBUTIONS.stream().anyMatch(r -> other.can(r) && heading.can(r)));
  }

  /** Whether the total of the table is computed from a column. */
  private boolean isReferredToAsContribution(Column column) {
    return columns.stream()
        .filter(other -> other.place() != column.place())
        .filter(
            other ->
                other
                    .heading()
                    .filter(h -> h.can(Role.UNCERTAINTY) || h.mark() != Heading.Mark.NONE)
                    .isPresent())
        .anyMatch(other -> other.refersTo(column, evaluation));
  }

  private java.util.stream.Stream<Column> others(Column column) {
    return columns.stream().filter(other -> other.place() != column.place());
  }

  /** A table with uncertainties has a value: if none is named, it stands to their left. */
  private void findValue() {
    boolean value =
        roles.values().stream().anyMatch(role -> role == Role.VALUE || role == Role.MEAN);
    if (value) {
      return;
    }
    columns.stream()
        .filter(column -> roles.get(column.place()) == Role.UNCERTAINTY)
        .findFirst()
        .flatMap(
            uncertainty ->
                columns.stream()
                    .filter(column -> column.place() < uncertainty.place())
                    .filter(column -> column.isOfNumbers() || column.isOfAmounts())
                    .filter(column -> !column.isSequence())
                    .filter(
                        column ->
                            !uncertainty.isOfSums() || !uncertainty.refersTo(column, evaluation))
                    .max(Comparator.comparing(Column::place)))
        .ifPresent(column -> roles.put(column.place(), Role.VALUE));
  }

  /** Whether the vocabulary counts a text as naming given values. */
  static boolean isGiven(HeadingGrammar grammar, String text) {
    return grammar.vocabulary().mentions(Notion.GIVEN, text);
  }
}
