package tenthmark.measurement.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.line.ExtremeLines.Bound;

class ExtremeLinesTest {

  @Nested
  class ByHand {

    // Two points with bars in y alone: corner to corner
    @Test
    void twoPointsWithBarsInY() {
      ExtremeLines lines =
          ExtremeLines.through(List.of(new Point(0, 1, 0, 0.5), new Point(2, 5, 0, 0.5)));
      assertBound(lines.steepest(), 2.5, 0.5);
      assertBound(lines.shallowest(), 1.5, 1.5);
      assertThat(lines.middleSlope()).isCloseTo(2, within(1e-14));
      assertThat(lines.slopeHalfDifference()).isCloseTo(0.5, within(1e-14));
      assertThat(lines.middleIntercept()).isCloseTo(1, within(1e-14));
      assertThat(lines.interceptHalfDifference()).isCloseTo(0.5, within(1e-14));
    }

    // (0.5, 0.5) to (1.5, 5.5) and (-0.5, 1.5) to (2.5, 4.5)
    @Test
    void twoPointsWithBarsInBoth() {
      ExtremeLines lines =
          ExtremeLines.through(List.of(new Point(0, 1, 0.5, 0.5), new Point(2, 5, 0.5, 0.5)));
      assertBound(lines.steepest(), 5, -2);
      assertBound(lines.shallowest(), 1, 2);
    }

    @Test
    void aFallingLineIsSteepestWhereItFallsMost() {
      ExtremeLines lines =
          ExtremeLines.through(List.of(new Point(0, 5, 0, 0.5), new Point(2, 1, 0, 0.5)));
      assertBound(lines.steepest(), -2.5, 5.5);
      assertBound(lines.shallowest(), -1.5, 4.5);
    }

    @Test
    void levelPointsAllowBothDirections() {
      ExtremeLines lines =
          ExtremeLines.through(List.of(new Point(0, 1, 0, 0.5), new Point(2, 1, 0, 0.25)));
      assertThat(lines.slopeHalfDifference()).isCloseTo(0.375, within(1e-15));
      assertThat(lines.middleSlope()).isCloseTo(0, within(1e-15));
    }

    @Test
    void barsOfNoLengthOnALineLeaveThatLine() {
      ExtremeLines lines =
          ExtremeLines.through(
              IntStream.range(0, 12)
                  .mapToObj(i -> new Point(0.1 * i, 0.7 + 0.3 * i, 0, 0))
                  .toList());
      assertBound(lines.steepest(), 3, 0.7);
      assertBound(lines.shallowest(), 3, 0.7);
    }
  }

  /** A line at the end of what the bars allow passes through two of their corners. */
  @Nested
  class BruteForce {

    @Test
    void findsTheSameLines() {
      Random random = new Random(21);
      int compared = 0;
      for (int i = 0; i < 1500; i++) {
        List<Point> points = randomPoints(random);
        Optional<ExtremeLines> expected = overAllCorners(points);
        if (expected.isPresent()) {
          ExtremeLines lines = ExtremeLines.through(points);
          assertBound(lines.steepest(), expected.get().steepest());
          assertBound(lines.shallowest(), expected.get().shallowest());
          compared++;
        } else {
          assertThatThrownBy(() -> ExtremeLines.through(points)).isInstanceOf(FitException.class);
        }
      }
      assertThat(compared).isBetween(500, 1400);
    }

    private static Optional<ExtremeLines> overAllCorners(List<Point> points) {
      List<double[]> corners = new ArrayList<>();
      for (Point p : points) {
        for (int side : new int[] {-1, 1}) {
          corners.add(new double[] {p.x() + side * p.ux(), p.y() - p.uy()});
          corners.add(new double[] {p.x() + side * p.ux(), p.y() + p.uy()});
        }
      }
      List<Bound> through = new ArrayList<>();
      for (double[] from : corners) {
        for (double[] to : corners) {
          double slope = (to[1] - from[1]) / (to[0] - from[0]);
          Bound line = new Bound(slope, from[1] - slope * from[0]);
          if (from[0] != to[0] && points.stream().allMatch(point -> passes(line, point))) {
            through.add(line);
          }
        }
      }
      boolean upright =
          points.stream().mapToDouble(p -> p.x() - p.ux()).max().orElseThrow()
              <= points.stream().mapToDouble(p -> p.x() + p.ux()).min().orElseThrow();
      if (through.isEmpty() || upright) {
        return Optional.empty();
      }
      through.sort((one, other) -> Double.compare(one.slope(), other.slope()));
      Bound lowest = through.get(0);
      Bound highest = through.get(through.size() - 1);
      return Optional.of(
          Math.abs(highest.slope()) >= Math.abs(lowest.slope())
              ? new ExtremeLines(highest, lowest)
              : new ExtremeLines(lowest, highest));
    }

    private static boolean passes(Bound line, Point p) {
      double atLeft = line.intercept() + line.slope() * (p.x() - p.ux());
      double atRight = line.intercept() + line.slope() * (p.x() + p.ux());
      return Math.min(atLeft, atRight) <= p.y() + p.uy() + 1e-9
          && Math.max(atLeft, atRight) >= p.y() - p.uy() - 1e-9;
    }
  }

  @Nested
  class Laws {

    @Test
    void unitsAndZerosDoNotMatter() {
      Random random = new Random(22);
      for (int i = 0; i < 300; i++) {
        List<Point> points = alongALine(random);
        double unitX = Math.pow(10, random.nextInt(100) - 50);
        double unitY = Math.pow(10, random.nextInt(100) - 50);
        ExtremeLines plain = ExtremeLines.through(points);
        ExtremeLines changed =
            ExtremeLines.through(
                map(
                    points,
                    p ->
                        new Point(
                            unitX * p.x(), unitY * (p.y() + 3), unitX * p.ux(), unitY * p.uy())));
        double unit = unitY / unitX;
        assertThat(changed.steepest().slope() / unit)
            .isCloseTo(plain.steepest().slope(), within(1e-9));
        assertThat(changed.shallowest().slope() / unit)
            .isCloseTo(plain.shallowest().slope(), within(1e-9));
        assertThat(changed.interceptHalfDifference() / unitY)
            .isCloseTo(plain.interceptHalfDifference(), within(1e-9));
      }
    }

    @Test
    void longerBarsAllowMore() {
      Random random = new Random(23);
      for (int i = 0; i < 300; i++) {
        List<Point> points = alongALine(random);
        List<Point> longer =
            map(points, p -> new Point(p.x(), p.y(), p.ux() * 1.05, p.uy() * 1.05));
        assertThat(ExtremeLines.through(longer).slopeHalfDifference())
            .isGreaterThan(ExtremeLines.through(points).slopeHalfDifference());
      }
    }
  }

  @Nested
  class Refused {

    @Test
    void isAPointOffEveryLine() {
      assertThatThrownBy(
              () ->
                  ExtremeLines.through(
                      List.of(
                          new Point(0, 0, 0, 0.1),
                          new Point(1, 5, 0, 0.1),
                          new Point(2, 0, 0, 0.1))))
          .isInstanceOf(FitException.class)
          .hasMessageStartingWith("no straight line passes through all error bars");
    }

    @Test
    void areBarsThatAnUprightLinePasses() {
      assertThatThrownBy(
              () -> ExtremeLines.through(List.of(new Point(0, 0, 1, 1), new Point(1, 3, 1, 1))))
          .hasMessageStartingWith("an upright line passes through all error bars");
      assertThatThrownBy(
              () -> ExtremeLines.through(List.of(new Point(2, 0, 0, 1), new Point(2, 9, 0, 1))))
          .hasMessageStartingWith("an upright line passes through all error bars");
    }
  }

  /** Some on a line, some not, with bars of any length. */
  private static List<Point> randomPoints(Random random) {
    double slope = 2 * random.nextGaussian();
    double length = 1.5 * random.nextDouble();
    return IntStream.range(0, 2 + random.nextInt(7))
        .mapToObj(
            i ->
                new Point(
                    i + random.nextDouble(),
                    slope * i + random.nextGaussian(),
                    length * random.nextDouble(),
                    2 * length * random.nextDouble()))
        .toList();
  }

  private static List<Point> alongALine(Random random) {
    double slope = 2 * random.nextGaussian();
    return IntStream.range(0, 3 + random.nextInt(7))
        .mapToObj(
            i ->
                new Point(
                    i + 0.1 * random.nextDouble(),
                    slope * i + 0.1 * random.nextDouble(),
                    0.1 + 0.1 * random.nextDouble(),
                    0.1 + 0.2 * random.nextDouble()))
        .toList();
  }

  private static List<Point> map(List<Point> points, UnaryOperator<Point> change) {
    return points.stream().map(change).toList();
  }

  private static void assertBound(Bound actual, Bound expected) {
    assertBound(actual, expected.slope(), expected.intercept());
  }

  private static void assertBound(Bound actual, double slope, double intercept) {
    double size = 1 + Math.abs(slope);
    assertThat(actual.slope()).isCloseTo(slope, within(1e-7 * size));
    assertThat(actual.intercept()).isCloseTo(intercept, within(1e-6 * size * size));
  }
}
