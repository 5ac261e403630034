package tenthmark.measurement.line;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tenthmark.measurement.line.ExtremeLines.Bound;

/**
 * The rectangles of all points' error bars. A line that rises, or is level, passes through one if
 * it runs at or below the upper left corner and at or above the lower right one. One upper left and
 * one lower right corner, of two points, bound the slope; all pairs together bound it exactly.
 */
record Bars(double[] left, double[] right, double[] bottom, double[] top) {

  /** Bars that meet at one place do so despite rounding; coordinates are of size 1. */
  private static final double ROUNDING = 1e-12;

  static Bars of(List<Point> points, Axis x, Axis y) {
    double[] u = x.values();
    double[] v = y.values();
    double[] halfWidth = halves(points, Point::ux, x);
    double[] halfHeight = halves(points, Point::uy, y);
    return new Bars(
        sum(u, halfWidth, -1), sum(u, halfWidth, 1), sum(v, halfHeight, -1), sum(v, halfHeight, 1));
  }

  /** Left and right exchanged, so that falling lines rise. */
  Bars mirrored() {
    return new Bars(negative(right), negative(left), bottom, top);
  }

  /** Whether an upright line passes through all bars, so that no slope is the greatest. */
  boolean allowUpright() {
    return Arrays.stream(left).max().orElseThrow()
        <= Arrays.stream(right).min().orElseThrow() + ROUNDING;
  }

  /**
   * The least and the most steeply rising line; empty if none rises through all bars. Not for bars
   * that allow an upright line.
   */
  List<Bound> risingEnds() {
    double least = 0;
    double most = Double.POSITIVE_INFINITY;
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < left.length; j++) {
        double run = left[i] - right[j];
        double rise = top[i] - bottom[j];
        if (run > ROUNDING) {
          most = Math.min(most, rise / run);
        } else if (run < -ROUNDING) {
          least = Math.max(least, rise / run);
        } else if (rise < -ROUNDING) {
          return List.of();
        }
      }
    }
    if (least > most + ROUNDING * (1 + least)) {
      return List.of();
    }
    return least > most ? List.of(line((least + most) / 2)) : List.of(line(least), line(most));
  }

  private Bound line(double slope) {
    double lowest = Double.NEGATIVE_INFINITY;
    double highest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < left.length; i++) {
      lowest = Math.max(lowest, bottom[i] - slope * right[i]);
      highest = Math.min(highest, top[i] - slope * left[i]);
    }
    return new Bound(slope, (lowest + highest) / 2);
  }

  private static double[] halves(
      List<Point> points, ToDoubleFunction<Point> uncertainty, Axis axis) {
    return points.stream().mapToDouble(uncertainty).map(axis::scaled).toArray();
  }

  private static double[] sum(double[] middles, double[] halves, int sign) {
    double[] ends = new double[middles.length];
    Arrays.setAll(ends, i -> middles[i] + sign * halves[i]);
    return ends;
  }

  private static double[] negative(double[] numbers) {
    return Arrays.stream(numbers).map(number -> -number).toArray();
  }
}
