package tenthmark.checker.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tenthmark.checker.unit.Measure;

/**
 * The unit of a part of a formula.
 *
 * @param measure the product of the units that went in
 * @param symbols those units as the workbook writes them, with their exponents
 * @param numbers the factors written in the formula: each may convert the unit
 * @param literal whether it is made of such numbers alone
 */
record Term(Measure measure, Map<String, Double> symbols, List<Double> numbers, boolean literal) {

  /** The unit of what counts or has none. */
  static final Term PURE = new Term(Measure.ONE, Map.of(), List.of(), false);

  /** Each number more would double what has to be tried. */
  private static final int MOST_NUMBERS = 8;

  /** In 600/t a minute's 60 stands with ten turns, in d/2000 a thousand with the half. */
  private static final int MOST_COUNTED = 100;

  /** Students write 3.14 and 57.3. */
  private static final double SAME = 2e-3;

  Term {
    symbols = Map.copyOf(symbols);
    numbers = List.copyOf(numbers);
  }

  static Term number(double value) {
    return new Term(Measure.ONE, Map.of(), value == 1 ? List.of() : List.of(value), true);
  }

  static Term of(Measure measure, String symbol) {
    return new Term(measure, Map.of(symbol, 1.0), List.of(), false);
  }

  /** What the numbers of a literal come to. */
  double value() {
    return numbers.stream().reduce(1.0, (one, other) -> one * other);
  }

  private boolean isOne() {
    return literal && numbers.isEmpty();
  }

  Term times(Term other) {
    List<Double> both = new ArrayList<>(numbers);
    both.addAll(other.numbers);
    if (!literal && other.isOne()) {
      both.add(1.0);
    }
    return new Term(
        measure.times(other.measure),
        joined(symbols, other.symbols),
        both,
        literal && other.literal);
  }

  private static Map<String, Double> joined(Map<String, Double> one, Map<String, Double> other) {
    Map<String, Double> joined = new TreeMap<>(one);
    other.forEach((symbol, exponent) -> joined.merge(symbol, exponent, Double::sum));
    joined.values().removeIf(exponent -> exponent == 0);
    return joined;
  }

  Term power(double exponent) {
    Map<String, Double> powers = new TreeMap<>();
    symbols.forEach((symbol, own) -> powers.put(symbol, own * exponent));
    return new Term(
        measure.power(exponent),
        powers,
        numbers.stream().map(number -> Math.pow(number, exponent)).toList(),
        literal);
  }

  /** The same unit where what the numbers do is done. */
  Term withNumbers(List<Double> others) {
    return new Term(measure, symbols, others, literal);
  }

  /** Whether its numbers are in another unit of the same kind, converted by some of them or not. */
  boolean fits(Measure other) {
    double needed = measure.over(other);
    return numbers.size() > MOST_NUMBERS || canMake(needed, 0, 1);
  }

  private boolean canMake(double needed, int from, double made) {
    double times = Math.max(made / needed, needed / made);
    boolean counted = !Structural.isPowerOfTen(made) && times <= MOST_COUNTED;
    if (Math.abs(times - (counted ? Math.rint(times) : 1)) <= SAME) {
      return true;
    }
    for (int i = from; i < numbers.size(); i++) {
      if (canMake(needed, i + 1, made * numbers.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the units fit without its only number of a thousand or more, or as small a part. */
  boolean isConvertedInVain(Measure other) {
    return Math.abs(measure.over(other) - 1) <= SAME
        && numbers.stream()
                .filter(Structural::isPowerOfTen)
                .filter(number -> Math.abs(Math.log10(number)) > 2.5)
                .count()
            == 1;
  }

  /** Whether it is a ratio in percent, which may stand below a heading with a unit. */
  boolean isPercentage() {
    return measure.isLike(Measure.ONE) && numbers.contains(100.0);
  }

  /**
   * Whether one of its numbers may have a unit: it is none that geometry and conversions have, or a
   * one, which nobody would multiply or divide by if it had none.
   */
  boolean mayHideUnit() {
    return numbers.contains(1.0) || !numbers.stream().allMatch(Structural::is);
  }

  /** The unit as a product of those that went in. */
  String shown() {
    if (symbols.size() == 1 && symbols.containsValue(1.0)) {
      return symbols.keySet().iterator().next();
    }
    String above = side(1);
    String below = side(-1);
    if (below.isEmpty()) {
      return above.isEmpty() ? "1" : above;
    }
    boolean several = symbols.values().stream().filter(exponent -> exponent < 0).count() > 1;
    return (above.isEmpty() ? "1" : above) + "/" + (several ? "(" + below + ")" : below);
  }

  private String side(int sign) {
    return symbols.entrySet().stream()
        .filter(symbol -> symbol.getValue() * sign > 0)
        .map(symbol -> symbol(symbol.getKey(), Math.abs(symbol.getValue())))
        .sorted()
        .collect(Collectors.joining("·"));
  }

  private static String symbol(String text, double exponent) {
    if (exponent == 1) {
      return text.matches(".*[/·* ].*") ? "(" + text + ")" : text;
    }
    String base = text.matches("\\p{L}+") ? text : "(" + text + ")";
    if (exponent == 2) {
      return base + "²";
    }
    if (exponent == 3) {
      return base + "³";
    }
    return base
        + "^"
        + (exponent == Math.rint(exponent)
            ? String.valueOf((long) exponent)
            : String.valueOf(exponent));
  }
}
