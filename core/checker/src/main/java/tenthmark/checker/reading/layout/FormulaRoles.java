package tenthmark.checker.reading.layout;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.formula.UncertaintyPairs;
import tenthmark.checker.reading.words.Role;
import tenthmark.measurement.formula.CellAddress;

/** What formulas say of the columns of a table: which are uncertainties, totals and their parts. */
final class FormulaRoles {

  private final List<Column> columns;
  private final Map<Integer, Role> roles;
  private final Evaluation evaluation;
  private final UncertaintyPairs pairs;
  private final List<Column> sums;
  private final Map<Column, Set<Column>> behind;

  FormulaRoles(List<Column> columns, Map<Integer, Role> roles, Surroundings surroundings) {
    this.columns = columns;
    this.roles = roles;
    this.evaluation = surroundings.evaluation();
    this.pairs = surroundings.pairs();
    this.sums = columns.stream().filter(Column::isOfSums).toList();
    this.behind = behindValues();
  }

  /** Formulas say what is the uncertainty of what, whatever the headings are. */
  void decide() {
    behind.forEach(
        (values, uncertainties) -> {
          for (Column column : uncertainties) {
            if (column.isPairedWith(values, pairs) || column.isPartOf(values, pairs)) {
              roles.put(column.place(), Role.UNCERTAINTY);
              if (roles.get(values.place()) != Role.MEAN) {
                roles.put(values.place(), Role.VALUE);
              }
            }
          }
        });
    sums.stream()
        .filter(this::isOfTotals)
        .forEach(column -> roles.put(column.place(), Role.UNCERTAINTY));
    columns.stream()
        .filter(column -> isSummed(column) || isOfContributions(column))
        .forEach(column -> roles.remove(column.place()));
  }

  /** The columns some cell of which formulas take for the uncertainty of one of the values. */
  private Map<Column, Set<Column>> behindValues() {
    Comparator<Column> byPlace = Comparator.comparing(Column::place);
    Map<CellAddress, Column> holders = new HashMap<>();
    columns.forEach(
        column -> column.cells().values().forEach(cell -> holders.put(cell.address(), column)));
    Map<Column, Set<Column>> behind = new TreeMap<>(byPlace);
    for (Column column : columns) {
      column.cells().values().stream()
          .map(TypedCell::address)
          .flatMap(cell -> Stream.of(pairs.value(cell), pairs.valueOfPart(cell)))
          .flatMap(value -> value.map(holders::get).stream())
          .forEach(
              values -> behind.computeIfAbsent(values, none -> new TreeSet<>(byPlace)).add(column));
    }
    return behind;
  }

  /** Whether a column adds up others that contribute to an uncertainty. */
  private boolean isOfTotals(Column column) {
    return others(column)
            .filter(other -> column.refersTo(other, evaluation))
            .map(other -> roles.get(other.place()))
            .anyMatch(role -> role != null && ColumnRoles.CONTRIBUTIONS.contains(role))
        && others(column)
            .filter(other -> column.refersTo(other, evaluation))
            .noneMatch(other -> roles.get(other.place()) == Role.UNCERTAINTY);
  }

  /** Whether a column is added up to the total, though no word calls it a contribution. */
  private boolean isSummed(Column column) {
    Role role = roles.get(column.place());
    return role != null
        && (role != Role.UNCERTAINTY || hasTotal(column))
        && !ColumnRoles.CONTRIBUTIONS.contains(role)
        && sums.stream()
            .filter(other -> other.place() != column.place())
            .filter(other -> roles.get(other.place()) == Role.UNCERTAINTY)
            .filter(other -> other.refersTo(column, evaluation))
            .anyMatch(other -> isSmaller(column, other));
  }

  /** Whether formulas elsewhere add most of a column's numbers up to uncertainties. */
  private boolean isOfContributions(Column column) {
    long summed =
        column.numbers().stream().filter(cell -> pairs.isContribution(cell.address())).count();
    Role role = roles.get(column.place());
    return role != null
        && role != Role.UNCERTAINTY
        && !ColumnRoles.CONTRIBUTIONS.contains(role)
        && summed > 0
        && 2 * summed > column.numbers().size();
  }

  /** Whether formulas say of another column that it is the uncertainty of values here. */
  private boolean hasTotal(Column part) {
    return behind.entrySet().stream()
        .anyMatch(
            entry ->
                entry.getValue().stream()
                    .filter(other -> other.place() != part.place())
                    .anyMatch(other -> other.isPairedWith(entry.getKey(), pairs)));
  }

  /** No part is larger than the sum. */
  private static boolean isSmaller(Column part, Column sum) {
    return part.typicalSize().isPresent()
        && sum.typicalSize().isPresent()
        && part.typicalSize().getAsDouble() <= sum.typicalSize().getAsDouble();
  }

  private Stream<Column> others(Column column) {
    return columns.stream().filter(other -> other.place() != column.place());
  }
}
