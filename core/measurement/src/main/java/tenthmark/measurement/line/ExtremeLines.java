package tenthmark.measurement.line;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The steepest and the shallowest straight line through the error bars of all points. The bars of a
 * point are the rectangle x - ux to x + ux, y - uy to y + uy, edges included.
 *
 * @param steepest the line whose slope is farther from zero
 * @param shallowest the line at the other end of the possible slopes
 */
public record ExtremeLines(Bound steepest, Bound shallowest) {

  /** A straight line at the end of what the error bars allow. */
  public record Bound(double slope, double intercept) {}

  /**
   * Finds both lines exactly.
   *
   * @param points at least two; ux and uy are the half-lengths of their bars
   * @throws FitException if no line, or an upright one, passes through all bars
   */
  public static ExtremeLines through(List<Point> points) {
    Axis x = Axis.centred(points, Point::x);
    Axis y = Axis.centred(points, Point::y);
    Bars bars = Bars.of(points, x, y);
    if (bars.allowUpright()) {
      throw FitException.of("fit.upright");
    }
    List<Bound> ends =
        Stream.concat(
                bars.risingEnds().stream(),
                bars.mirrored().risingEnds().stream()
                    .map(line -> new Bound(-line.slope(), line.intercept())))
            .map(line -> inUnits(line, x, y))
            .sorted(Comparator.comparingDouble(Bound::slope))
            .toList();
    if (ends.isEmpty()) {
      throw FitException.of("fit.no.line");
    }
    if (ends.stream().anyMatch(end -> !Double.isFinite(end.intercept()))) {
      throw FitException.of(LineFit.TOO_FAR);
    }
    Bound lowest = ends.get(0);
    Bound highest = ends.get(ends.size() - 1);
    return Math.abs(highest.slope()) >= Math.abs(lowest.slope())
        ? new ExtremeLines(highest, lowest)
        : new ExtremeLines(lowest, highest);
  }

  private static Bound inUnits(Bound line, Axis x, Axis y) {
    double slope = y.slope(line.slope(), x);
    return new Bound(slope, y.coordinate(line.intercept()) - slope * x.coordinate(0));
  }

  /** Half the difference of the slopes. */
  public double slopeHalfDifference() {
    return Math.abs(steepest.slope() / 2 - shallowest.slope() / 2);
  }

  /** Half the difference of the intercepts. */
  public double interceptHalfDifference() {
    return Math.abs(steepest.intercept() / 2 - shallowest.intercept() / 2);
  }

  /** The slope in the middle of both. */
  public double middleSlope() {
    return steepest.slope() / 2 + shallowest.slope() / 2;
  }

  /** The intercept in the middle of both. */
  public double middleIntercept() {
    return steepest.intercept() / 2 + shallowest.intercept() / 2;
  }
}
