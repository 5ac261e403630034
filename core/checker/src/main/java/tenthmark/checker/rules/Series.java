package tenthmark.checker.rules;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/**
 * Readings of one quantity that were typed in and of which a mean is taken.
 *
 * @param mean the formula of the mean
 * @param range where they stand
 * @param readings by their cells
 */
record Series(Cell mean, CellRange range, Map<CellAddress, Double> readings) {

  private static final int FEWEST = 3;
  private static final double WIDEST = 0.3;
  private static final double AMONG = 0.2;
  private static final Set<String> MEANS = Set.of("AVERAGE", "MEDIAN");
  private static final Set<String> OF_MEAN = Set.of("AVERAGE", "MEDIAN", "ROUND");

  /** The series of a workbook, each once. */
  static Stream<Series> in(Inspection inspection) {
    Map<CellRange, Series> found = new LinkedHashMap<>();
    inspection
        .formulas()
        .flatMap(cell -> of(cell, inspection).stream())
        .forEach(series -> found.putIfAbsent(series.range(), series));
    return found.values().stream();
  }

  /** The series of which a formula is the mean and nothing else. */
  static Optional<Series> of(Cell cell, Inspection inspection) {
    if (!(cell.content() instanceof Content.Formula formula)) {
      return Optional.empty();
    }
    List<String> functions = formula.functions();
    List<CellRange> ranges = inspection.evaluation().references(cell);
    boolean ofOneRange =
        functions.stream().anyMatch(MEANS::contains)
            && OF_MEAN.containsAll(functions)
            && ranges.size() == 1
            && (ranges.get(0).width() == 1 || ranges.get(0).height() == 1);
    return ofOneRange ? typed(cell, ranges.get(0), inspection) : Optional.empty();
  }

  private static Optional<Series> typed(Cell mean, CellRange range, Inspection inspection) {
    Map<CellAddress, Double> readings = new LinkedHashMap<>();
    List<Cell> cells =
        inspection.workbook().sheet(range.sheet()).stream()
            .flatMap(sheet -> sheet.cells(range))
            .toList();
    for (Cell cell : cells) {
      if (cell.content() instanceof Content.Number number) {
        readings.put(cell.address(), number.value());
      } else if (cell.content() instanceof Content.Formula) {
        return Optional.empty();
      }
    }
    return readings.size() < FEWEST
        ? Optional.empty()
        : Optional.of(new Series(mean, range, readings));
  }

  /**
   * The readings that would lie among the others but for a power of ten, where those agree so well
   * that none of them is a tenth of another.
   */
  Map<CellAddress, Factor> slips() {
    double median = median();
    List<CellAddress> far =
        readings.keySet().stream()
            .filter(cell -> !isNear(readings.get(cell), median, WIDEST))
            .toList();
    Map<CellAddress, Factor> slips = new LinkedHashMap<>();
    if (far.size() == 1 && readings.get(far.get(0)) != 0) {
      Factor.decimal(readings.get(far.get(0)), value -> isNear(value, median, AMONG))
          .ifPresent(factor -> slips.put(far.get(0), factor));
    }
    return slips;
  }

  private static boolean isNear(double value, double right, double share) {
    return Math.abs(value - right) <= share * Math.abs(right);
  }

  double[] values() {
    return readings.values().stream().mapToDouble(value -> value).toArray();
  }

  double median() {
    double[] sorted = values();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
