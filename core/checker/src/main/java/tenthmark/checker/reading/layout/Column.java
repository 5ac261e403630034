package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.formula.Sums;
import tenthmark.checker.reading.formula.UncertaintyPairs;
import tenthmark.checker.reading.words.Heading;
import tenthmark.checker.record.Amount;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/**
 * The cells of a table at one place of each line, under their heading: a column, or a row where the
 * records stand side by side.
 *
 * @param cells by line
 */
record Column(
    int place,
    Optional<Heading> heading,
    Optional<CellAddress> headingCell,
    NavigableMap<Integer, TypedCell> cells) {

  private static final double MUCH_SMALLER = 0.2;

  /** Whether formulas say of at least half its numbers that they are uncertainties of values. */
  boolean isPairedWith(Column values, UncertaintyPairs pairs) {
    long paired =
        cells.entrySet().stream()
            .filter(
                entry ->
                    Optional.ofNullable(values.cells().get(entry.getKey()))
                        .map(TypedCell::address)
                        .equals(pairs.value(entry.getValue().address())))
            .filter(entry -> values.cells().containsKey(entry.getKey()))
            .count();
    return paired > 0 && 2 * paired >= numbers().size();
  }

  /** Whether formulas say of at least half its numbers that they are parts of values. */
  boolean isPartOf(Column values, UncertaintyPairs pairs) {
    long parts =
        cells.entrySet().stream()
            .filter(entry -> values.cells().containsKey(entry.getKey()))
            .filter(
                entry ->
                    pairs
                        .valueOfPart(entry.getValue().address())
                        .filter(values.cells().get(entry.getKey()).address()::equals)
                        .isPresent())
            .count();
    return parts > 0 && 2 * parts >= numbers().size();
  }

  /** Whether most of it may be numbers. */
  boolean isOfNumbers() {
    long numbers = cells.values().stream().filter(TypedCell::mayBeNumber).count();
    return numbers > 0 && 2 * numbers >= cells.size();
  }

  /** Whether it holds texts and no number. */
  boolean isOfTexts() {
    return !cells.isEmpty() && !isOfNumbers();
  }

  /** Whether most of its texts are amounts, such as 0,5 mm. */
  boolean isOfAmounts() {
    long amounts = texts().stream().filter(Column::isAmount).count();
    return amounts > 0 && 2 * amounts >= cells.size();
  }

  /** Whether most of its texts state a value with its uncertainty. */
  boolean isOfStatedResults() {
    long stated =
        texts().stream()
            .filter(
                text ->
                    Amount.stated(text)
                        .filter(found -> found.uncertainty().isPresent())
                        .isPresent())
            .count();
    return stated > 0 && 2 * stated >= cells.size();
  }

  static boolean isAmount(String text) {
    return Amount.of(new Value.Text(text)).isPresent();
  }

  List<String> texts() {
    return cells.values().stream().filter(TypedCell::isText).map(TypedCell::text).toList();
  }

  List<TypedCell> numbers() {
    return cells.values().stream().filter(TypedCell::isNumber).toList();
  }

  /** Whether it counts the lines: whole numbers, each one more than the last. */
  boolean isSequence() {
    List<TypedCell> numbers = numbers();
    if (numbers.size() < 2) {
      return numbers.size() == 1 && numbers.get(0).number() == 1;
    }
    for (int i = 1; i < numbers.size(); i++) {
      if (numbers.get(i).number() != numbers.get(i - 1).number() + 1) {
        return false;
      }
    }
    return numbers.get(0).number() == 0 || numbers.get(0).number() == 1;
  }

  /** Whether all its numbers are whole. */
  boolean isWhole() {
    return numbers().stream().allMatch(cell -> cell.number() == Math.rint(cell.number()));
  }

  /** Whether most of its numbers were typed. */
  boolean isMostlyTyped() {
    long typed = numbers().stream().filter(TypedCell::isTyped).count();
    return typed > 1 && 2 * typed > numbers().size();
  }

  /** Whether all its numbers were typed. */
  boolean isTyped() {
    return numbers().stream().noneMatch(TypedCell::isFormula);
  }

  /** The median of the sizes of its numbers. */
  OptionalDouble typicalSize() {
    double[] sizes =
        numbers().stream().mapToDouble(cell -> Math.abs(cell.number())).sorted().toArray();
    return sizes.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(sizes[sizes.length / 2]);
  }

  /** Whether a line has a number of both, or one of them has no number at all. */
  boolean meets(Column other) {
    return numbers().isEmpty()
        || other.numbers().isEmpty()
        || cells.entrySet().stream()
            .filter(entry -> entry.getValue().isNumber())
            .map(entry -> other.cells().get(entry.getKey()))
            .anyMatch(cell -> cell != null && cell.isNumber());
  }

  /** Whether its numbers are much smaller than those of another. */
  boolean isSmallBeside(Column other) {
    return typicalSize().isPresent()
        && other.typicalSize().isPresent()
        && typicalSize().getAsDouble() < MUCH_SMALLER * other.typicalSize().getAsDouble();
  }

  /** Whether its formulas refer to the cells of another in their own lines. */
  boolean refersTo(Column other, Evaluation evaluation) {
    for (Map.Entry<Integer, TypedCell> cell : cells.entrySet()) {
      TypedCell target = other.cells().get(cell.getKey());
      if (target != null && cell.getValue().isFormula()) {
        return evaluation.references(cell.getValue().cell()).stream()
            .anyMatch(range -> range.contains(target.address()));
      }
    }
    return false;
  }

  /** Whether its formulas, or most of them, add cells up. */
  boolean isOfSums() {
    List<TypedCell> formulas = cells.values().stream().filter(TypedCell::isFormula).toList();
    long sums = formulas.stream().filter(cell -> Sums.isSum(cell.cell())).count();
    return sums > 0 && 2 * sums >= formulas.size();
  }

  /** Whether its heading or each of its texts says percent. */
  boolean isInPercent() {
    return unit().equals("%")
        || isOfTexts() && texts().stream().allMatch(text -> text.strip().endsWith("%"));
  }

  /** The unit that the heading states, or empty. */
  String unit() {
    return heading.map(Heading::unit).orElse("");
  }

  /** The quantity's name in the heading, or empty. */
  String name() {
    return heading.map(Heading::name).orElse("");
  }
}
