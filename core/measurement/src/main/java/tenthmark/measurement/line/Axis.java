package tenthmark.measurement.line;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One coordinate of the points, less a zero and divided by a power of two, so that squares neither
 * lose digits nor overflow: every value lies between -2 and 2. Scaling is exact.
 */
final class Axis {

  private final double zero;
  private final int exponent;
  private final double[] values;

  private Axis(double zero, double[] coordinates) {
    this.zero = zero;
    double reach = Arrays.stream(coordinates).map(x -> Math.abs(x - zero)).max().orElseThrow();
    this.exponent = reach == 0 ? 0 : Math.getExponent(reach);
    this.values = Arrays.stream(coordinates).map(x -> scaled(x - zero)).toArray();
  }

  /** With its zero in the middle of the coordinates. */
  static Axis centred(List<Point> points, ToDoubleFunction<Point> coordinate) {
    double[] coordinates = points.stream().mapToDouble(coordinate).toArray();
    double least = Arrays.stream(coordinates).min().orElseThrow();
    double greatest = Arrays.stream(coordinates).max().orElseThrow();
    return new Axis(least / 2 + greatest / 2, coordinates);
  }

  /** With its zero where the coordinates have theirs. */
  static Axis fromZero(List<Point> points, ToDoubleFunction<Point> coordinate) {
    return new Axis(0, points.stream().mapToDouble(coordinate).toArray());
  }

  double[] values() {
    return values;
  }

  boolean isSinglePlace() {
    return Arrays.stream(values).allMatch(value -> value == values[0]);
  }

  /** A difference of coordinates in this axis' unit. */
  double scaled(double difference) {
    return Math.scalb(difference, -exponent);
  }

  /** A difference on this axis in the coordinates' unit. */
  double difference(double scaled) {
    return Math.scalb(scaled, exponent);
  }

  /** A place on this axis as a coordinate. */
  double coordinate(double scaled) {
    return zero + difference(scaled);
  }

  /** A slope on this axis as y over {@code x}, in the coordinates' units. */
  double slope(double scaled, Axis x) {
    return Math.scalb(scaled, exponent - x.exponent);
  }
}
