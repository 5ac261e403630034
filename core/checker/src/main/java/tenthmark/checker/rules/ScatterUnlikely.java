package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.Line;
import tenthmark.measurement.line.LineFit;
import tenthmark.measurement.line.Point;
import tenthmark.measurement.repeats.Side;
import tenthmark.measurement.repeats.StrayTest;
import tenthmark.measurement.wording.Message;

/**
 * Repeats of which one lies far from all others by Grubbs' test, or which are all the same, and a
 * point far off the line through the others. Each may be honest, so that it is only told.
 */
@AutoService(Rule.class)
public final class ScatterUnlikely implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("scatter-unlikely", Severity.NOTE);

  /** Stricter than the usual 5 %: of so many series in a class some would go beyond that. */
  private static final double LEVEL = 0.01;

  private static final int FEWEST_EQUAL = 4;
  private static final int FEWEST_POINTS = 5;

  /** Times the scatter of the other points about their line. Common practice, no source. */
  private static final double FAR = 6;

  /** A share of the range of y that rounding may leave of points on a line. */
  private static final double ROUNDING = 1e-3;

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    List<Finding> findings = new ArrayList<>();
    Series.in(inspection).forEach(readings -> ofRepeats(readings).ifPresent(findings::add));
    Set<List<CellRange>> lines = new HashSet<>();
    inspection
        .formulas()
        .filter(ScatterUnlikely::isOfLine)
        .map(cell -> inspection.evaluation().references(cell))
        .filter(ranges -> ranges.size() == 2 && lines.add(ranges))
        .forEach(ranges -> offLine(ranges, inspection.evaluation()).ifPresent(findings::add));
    return findings;
  }

  private static boolean isOfLine(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && formula.functions().contains("SLOPE");
  }

  private static Optional<Finding> ofRepeats(Series series) {
    double[] values = series.values();
    Set<CellAddress> slipped = series.slips().keySet();
    Spread spread = Spread.of(values);
    CellAddress first = series.readings().keySet().iterator().next();
    if (spread.deviation() == 0) {
      return values.length < FEWEST_EQUAL
          ? Optional.empty()
          : Optional.of(
              DECLARATION.finding(
                  first,
                  Message.of("scatter-unlikely.equal", values.length, Numbers.show(values[0])),
                  Message.of("scatter-unlikely.equal.expected")));
    }
    double limit = StrayTest.GRUBBS.limit(values.length, LEVEL, Side.BOTH);
    return series.readings().entrySet().stream()
        .filter(reading -> !slipped.contains(reading.getKey()))
        .filter(
            reading -> Math.abs(reading.getValue() - spread.mean()) > limit * spread.deviation())
        .findFirst()
        .map(
            reading ->
                DECLARATION.finding(
                    reading.getKey(),
                    Message.of(
                        "scatter-unlikely.stray",
                        Numbers.show(reading.getValue()),
                        Numbers.showBriefly(
                            Math.abs(reading.getValue() - spread.mean()) / spread.deviation()),
                        values.length),
                    Message.of("scatter-unlikely.stray.expected", Numbers.showBriefly(limit))));
  }

  private static Optional<Finding> offLine(List<CellRange> ranges, Evaluation evaluation) {
    Map<CellAddress, Point> points = new LinkedHashMap<>();
    List<CellAddress> ys = ranges.get(0).cells();
    List<CellAddress> xs = ranges.get(1).cells();
    for (int i = 0; i < Math.min(xs.size(), ys.size()); i++) {
      Optional<Double> x = evaluation.number(xs.get(i));
      Optional<Double> y = evaluation.number(ys.get(i));
      if (x.isPresent() && y.isPresent()) {
        points.put(ys.get(i), new Point(x.get(), y.get(), 0, 0));
      }
    }
    return points.size() < FEWEST_POINTS ? Optional.empty() : farthest(points);
  }

  /** The point that is farthest from the line through the others, in terms of their scatter. */
  private static Optional<Finding> farthest(Map<CellAddress, Point> points) {
    double range =
        points.values().stream().mapToDouble(Point::y).max().orElseThrow()
            - points.values().stream().mapToDouble(Point::y).min().orElseThrow();
    Map<CellAddress, Double> far = new HashMap<>();
    points.forEach(
        (cell, point) -> {
          List<Point> others =
              points.entrySet().stream()
                  .filter(other -> !other.getKey().equals(cell))
                  .map(Map.Entry::getValue)
                  .toList();
          distance(point, others, range)
              .filter(times -> times > FAR)
              .ifPresent(times -> far.put(cell, times));
        });
    return far.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(
            point ->
                DECLARATION.finding(
                    point.getKey(),
                    Message.of(
                        "scatter-unlikely.point",
                        Numbers.show(points.get(point.getKey()).y()),
                        Numbers.showBriefly(point.getValue()),
                        points.size() - 1),
                    Message.of("scatter-unlikely.point.expected", Numbers.show(FAR))));
  }

  private static Optional<Double> distance(Point point, List<Point> others, double range) {
    try {
      Line line = LineFit.byScatter(others, false);
      double scatter =
          Math.sqrt(
              others.stream().mapToDouble(other -> Math.pow(off(other, line), 2)).sum()
                  / (others.size() - 2));
      return Optional.of(Math.abs(off(point, line)) / Math.max(scatter, ROUNDING * range));
    } catch (FitException noLine) {
      // The cell's own error says so.
      return Optional.empty();
    }
  }

  private static double off(Point point, Line line) {
    return point.y() - line.intercept() - line.slope() * point.x();
  }
}
