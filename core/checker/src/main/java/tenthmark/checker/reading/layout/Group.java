package tenthmark.checker.reading.layout;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.words.GivenUncertainty;
import tenthmark.checker.record.Field;
import tenthmark.measurement.formula.CellAddress;

/** A column of values with the columns that belong to them. */
final class Group {

  /** One cell whose number is the uncertainty of a whole column. */
  record Common(CellAddress cell, String unit) {}

  private final Column value;
  private final Map<Field, Column> attached = new EnumMap<>(Field.class);
  private Optional<Common> common = Optional.empty();
  private Optional<GivenUncertainty> given = Optional.empty();
  private boolean named;
  private boolean typed;

  Group(Column value) {
    this.value = value;
  }

  Column value() {
    return value;
  }

  Map<Field, Column> attached() {
    return attached;
  }

  Optional<Column> column(Field field) {
    return Optional.ofNullable(attached.get(field));
  }

  boolean has(Field field) {
    return attached.containsKey(field);
  }

  /** Attaches a column, if there is none of its kind. */
  boolean attach(Field field, Column column) {
    return attached.putIfAbsent(field, column) == null;
  }

  /** Where a table has no total, the only contribution is the uncertainty. */
  void takeOnlyContribution() {
    List<Field> contributions = Field.CONTRIBUTIONS.stream().filter(attached::containsKey).toList();
    boolean numbers =
        contributions.size() == 1 && attached.get(contributions.get(0)).isSmallBeside(value);
    if (numbers) {
      attached.put(Field.UNCERTAINTY, attached.remove(contributions.get(0)));
    }
  }

  void replace(Field field, Column column) {
    attached.put(field, column);
  }

  void common(Common cell) {
    common = Optional.of(cell);
  }

  Optional<Common> common() {
    return common;
  }

  /** Notes that an uncertainty was found by the name of the quantity. */
  void foundByName() {
    named = true;
  }

  boolean isFoundByName() {
    return named;
  }

  /** Notes that what is stated elsewhere is one of readings, not of what is computed of them. */
  void onlyTyped() {
    typed = true;
  }

  boolean isOnlyTyped() {
    return typed && column(Field.UNCERTAINTY).isEmpty();
  }

  /** States one uncertainty for all values. */
  void give(GivenUncertainty uncertainty) {
    given = Optional.of(uncertainty);
  }

  Optional<GivenUncertainty> given() {
    return given.isPresent() ? given : value.heading().flatMap(heading -> heading.given());
  }

  boolean hasContributions() {
    return Field.CONTRIBUTIONS.stream().anyMatch(attached::containsKey);
  }

  /** Whether nothing but contributions tells that the values are measured. */
  boolean isOnlyOfContributions() {
    return hasContributions()
        && !has(Field.UNCERTAINTY)
        && given().isEmpty()
        && common.isEmpty()
        && !value.isOfStatedResults();
  }

  /** Whether the contributions have the size of contributions to the uncertainty of the values. */
  boolean areContributionsSmall() {
    return Field.CONTRIBUTIONS.stream()
        .flatMap(field -> column(field).stream())
        .filter(column -> column.typicalSize().isPresent())
        .allMatch(column -> column.isSmallBeside(value));
  }

  boolean hasUncertainty() {
    return has(Field.UNCERTAINTY)
        || hasContributions()
        || given().isPresent()
        || common.isPresent()
        || value.isOfStatedResults();
  }
}
