package tenthmark.samples.mistakes;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** Mistakes with repeats, means and lines. */
final class StatisticMistakes {

  private static final String FAMILY = "statistics";
  private static final Set<String> MEAN = Set.of("repeat-differs");
  private static final Set<String> RANGE = Set.of("range-short");
  private static final Pattern ROOT_OF_COUNT =
      Pattern.compile("/SQRT\\((COUNT\\([^()]*\\)|\\d+|[A-Z$]+\\d+)\\)");
  private static final Pattern DEVIATION = Pattern.compile("(_xlfn\\.)?STDEV(\\.S)?\\(");
  private static final Pattern OF_SERIES =
      Pattern.compile("(AVERAGE|STDEV|STDEV\\.S|MEDIAN)\\((([$A-Z]+)\\$?\\d+:\\3\\$?)(\\d+)\\)");
  private static final Pattern SLOPE =
      Pattern.compile("(SLOPE|INTERCEPT|STEYX)\\(([^,()]+),([^,()]+)\\)");
  private static final Pattern DOWN = Pattern.compile("((\\$?[A-Z]+)\\$?\\d+:\\2\\$?)(\\d+)");
  private static final int FEWEST = 4;

  private StatisticMistakes() {}

  static List<Mistake> all() {
    return List.of(
        new Mistake(
            "standard deviation of a reading for that of the mean",
            FAMILY,
            MEAN,
            subject -> edited(subject, ROOT_OF_COUNT, root -> "")),
        new Mistake(
            "deviation of a population",
            FAMILY,
            MEAN,
            subject -> edited(subject, DEVIATION, deviation -> "STDEVP(")),
        new Mistake(
            "root of another number than the series has",
            FAMILY,
            MEAN,
            subject ->
                edited(
                    subject,
                    ROOT_OF_COUNT,
                    root -> "/SQRT(" + (root.group(1).matches("3|[A-Z].*") ? 20 : 3) + ")")),
        new Mistake(
            "mean or deviation leaves out the last reading",
            FAMILY,
            RANGE,
            subject ->
                edited(
                    subject,
                    OF_SERIES,
                    series ->
                        series.group(1)
                            + "("
                            + series.group(2)
                            + (Integer.parseInt(series.group(4)) - 1)
                            + ")")),
        new Mistake(
            "line leaves out the last point",
            FAMILY,
            RANGE,
            subject ->
                edited(
                    subject,
                    SLOPE,
                    line ->
                        line.group(1)
                            + "("
                            + shorter(line.group(2))
                            + ","
                            + shorter(line.group(3))
                            + ")")),
        new Mistake(
            "x and y of a line changed places",
            FAMILY,
            Set.of("unit-unlike-formula"),
            subject ->
                edited(
                    subject,
                    SLOPE,
                    line -> line.group(1) + "(" + line.group(3) + "," + line.group(2) + ")")),
        new Mistake(
            "decimal point slipped in one of several readings",
            FAMILY,
            Set.of("factor-slip"),
            subject -> series(subject).flatMap(range -> scaled(subject, range).stream())),
        new Mistake(
            "uncertainty of a slope a twentieth of the scatter's",
            FAMILY,
            Set.of("slope-too-sure"),
            subject ->
                subject
                    .records("slope")
                    .filter(record -> record.uncertainty().flatMap(subject::number).isPresent())
                    .map(
                        record ->
                            Planted.number(
                                    record.uncertainty().orElseThrow(),
                                    0.05
                                        * subject
                                            .number(record.uncertainty().orElseThrow())
                                            .orElseThrow())
                                .near(record.places()))),
        new Mistake(
            "intercept taken for the slope",
            FAMILY,
            Set.of("unit-unlike-formula"),
            subject -> edited(subject, Pattern.compile("^SLOPE\\("), slope -> "INTERCEPT(")),
        new Mistake(
            "point of a line off by a decimal point",
            FAMILY,
            Set.of("scatter-unlikely", "factor-slip"),
            subject ->
                subject
                    .formulas()
                    .filter(
                        cell ->
                            subject
                                .formula(cell)
                                .filter(text -> text.startsWith("SLOPE("))
                                .isPresent())
                    .flatMap(cell -> subject.ranges(cell).stream().limit(1))
                    .filter(range -> range.height() * range.width() > FEWEST)
                    .flatMap(range -> scaled(subject, range).stream())),
        new Mistake(
            "one stray among repeats",
            FAMILY,
            Set.of("scatter-unlikely"),
            subject -> series(subject).flatMap(range -> stray(subject, range).stream())),
        new Mistake(
            "repeats all equal",
            FAMILY,
            Set.of("scatter-unlikely"),
            subject -> series(subject).flatMap(range -> equal(subject, range).stream())));
  }

  private interface Edit {
    String of(Matcher found);
  }

  private static Stream<Planted> edited(Subject subject, Pattern pattern, Edit edit) {
    return subject
        .formulas()
        .flatMap(
            cell ->
                FormulaMistakes.changed(
                    subject,
                    cell,
                    text -> {
                      Matcher found = pattern.matcher(text);
                      return found.find()
                          ? FormulaMistakes.replaced(text, found, edit.of(found))
                          : text;
                    })
                    .map(planted -> planted.near(around(subject, cell)))
                    .map(planted -> planted.near(Set.copyOf(subject.precedents(cell))))
                    .stream());
  }

  private static String shorter(String range) {
    Matcher down = DOWN.matcher(range);
    return down.matches() ? down.group(1) + (Integer.parseInt(down.group(3)) - 1) : range;
  }

  /** The records of which a cell is part, or that are computed from it. */
  private static Set<CellAddress> around(Subject subject, CellAddress cell) {
    return subject
        .records()
        .filter(
            record ->
                record.places().contains(cell)
                    || record.places().stream()
                        .anyMatch(place -> subject.precedents(place).contains(cell)))
        .flatMap(record -> record.places().stream())
        .collect(Collectors.toSet());
  }

  /** The typed readings of which a mean is computed. */
  private static Stream<CellRange> series(Subject subject) {
    return subject
        .formulas()
        .filter(cell -> subject.formula(cell).filter(text -> text.contains("AVERAGE(")).isPresent())
        .flatMap(cell -> subject.ranges(cell).stream())
        .filter(range -> range.height() * range.width() >= FEWEST)
        .filter(range -> range.height() == 1 || range.width() == 1)
        .filter(range -> range.cells().stream().allMatch(cell -> subject.typed(cell).isPresent()))
        .distinct();
  }

  private static Optional<Planted> scaled(Subject subject, CellRange range) {
    CellAddress cell = range.cells().get(1);
    return subject
        .typed(cell)
        .filter(number -> number != 0)
        .map(number -> Planted.number(cell, number * 10).near(near(subject, range)));
  }

  /** Twelve times the spread away: beyond every table of critical values. */
  private static Optional<Planted> stray(Subject subject, CellRange range) {
    double[] numbers =
        range.cells().stream().mapToDouble(cell -> subject.typed(cell).orElseThrow()).toArray();
    double low = Arrays.stream(numbers).min().orElseThrow();
    double high = Arrays.stream(numbers).max().orElseThrow();
    return high > low
        ? Optional.of(
            Planted.number(range.cells().get(2), high + 12 * (high - low))
                .near(near(subject, range)))
        : Optional.empty();
  }

  private static Optional<Planted> equal(Subject subject, CellRange range) {
    double first = subject.typed(range.first()).orElseThrow();
    return range.cells().stream()
        .map(cell -> Planted.number(cell, first))
        .reduce(Planted::and)
        .map(planted -> planted.near(near(subject, range)));
  }

  private static Set<CellAddress> near(Subject subject, CellRange range) {
    Set<CellAddress> near = new LinkedHashSet<>(range.cells());
    range.cells().forEach(cell -> near.addAll(around(subject, cell)));
    return near;
  }
}
