package tenthmark.measurement.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.ReferenceData.assertDigits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.hipparchus.stat.regression.SimpleRegression;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.ReferenceData;

class LineFitTest {

  @Nested
  class PublishedCases {

    // NIST StRD, linear regression, Norris (lower difficulty)
    @Test
    void norris() {
      Line line = LineFit.byScatter(points("nist-strd/norris.csv"), false);
      assertDigits(line.slope(), "1.00211681802045", 13);
      assertDigits(line.intercept(), "-0.262323073774029", 12);
      assertDigits(line.slopeUncertainty(), "0.000429796848199937", 13);
      assertDigits(line.interceptUncertainty(), "0.232818234301152", 13);
      assertDigits(line.residualDeviation(), "0.884796396144373", 13);
      assertThat(line.freedom()).isEqualTo(34);
    }

    // NIST StRD, linear regression, NoInt1 and NoInt2 (average difficulty)
    @Test
    void linesThroughTheOrigin() {
      Line first = LineFit.byScatter(points("nist-strd/noint1.csv"), true);
      assertDigits(first.slope(), "2.07438016528926", 14);
      assertDigits(first.slopeUncertainty(), "0.165289256198347E-01", 13);
      assertDigits(first.residualDeviation(), "3.56753034006338", 13);
      Line second = LineFit.byScatter(points("nist-strd/noint2.csv"), true);
      assertDigits(second.slope(), "0.727272727272727", 14);
      assertDigits(second.slopeUncertainty(), "0.420827318078432E-01", 13);
      assertDigits(second.residualDeviation(), "0.369274472937998", 13);
      assertThat(second.intercept()).isZero();
      assertThat(second.interceptUncertainty()).isZero();
      assertThat(second.correlation()).isZero();
    }

    // JCGM 100:2008, H.3, table H.6 and H.3.3 to H.3.5: a thermometer's corrections against
    // t - 20 °C; printed values from memory
    @Test
    void thermometer() {
      Line line =
          LineFit.byScatter(
              ReferenceData.rows("gum/gum-h3.csv").stream()
                  .map(row -> new Point(row[0] - 20, row[1], 0, 0))
                  .toList(),
              false);
      assertThat(line.intercept()).isCloseTo(-0.1712, within(0.00005));
      assertThat(line.interceptUncertainty()).isCloseTo(0.0029, within(0.00005));
      assertThat(line.slope()).isCloseTo(0.00218, within(0.000005));
      assertThat(line.slopeUncertainty()).isCloseTo(0.00067, within(0.000005));
      assertThat(line.correlation()).isCloseTo(-0.930, within(0.0005));
      assertThat(line.residualDeviation()).isCloseTo(0.0035, within(0.00005));
      assertThat(line.at(10)).isCloseTo(-0.1494, within(0.00005));
      assertThat(line.uncertaintyAt(10)).isCloseTo(0.0041, within(0.00005));
      assertThat(line.centre() + 20).isCloseTo(24.0085, within(0.0001));
      assertThat(line.height()).isCloseTo(-0.1625, within(0.00005));
      assertThat(line.heightUncertainty()).isCloseTo(0.0011, within(0.00005));
    }

    // York, Can. J. Phys. 44 (1966) 1079 on Pearson's data of 1901: slope and intercept as quoted
    // in
    // a public least-squares tutorial; the uncertainties were recomputed with the equations of York
    // et al., Am. J. Phys. 72 (2004) 367, not read there
    @Test
    void yorksWeightsOnPearsonsData() {
      Line line = LineFit.byUncertainties(pearson(), false);
      assertDigits(line.slope(), "-0.48053340745", 10.5);
      assertDigits(line.intercept(), "5.47991022403", 11.5);
      assertDigits(line.slopeUncertainty(), "0.05798501", 7);
      assertDigits(line.interceptUncertainty(), "0.29497074", 7);
      assertDigits(line.chiSquared().orElseThrow(), "11.8663532", 8);
      assertThat(line.freedom()).isEqualTo(8);
    }

    // the same data; the scatter about the line as it is printed there
    @Test
    void residualDeviationIsUprightWhateverTheWeights() {
      double squares =
          pearson().stream()
              .mapToDouble(point -> point.y() - (5.47991022403 - 0.48053340745 * point.x()))
              .map(residual -> residual * residual)
              .sum();
      assertThat(LineFit.byUncertainties(pearson(), false).residualDeviation())
          .isCloseTo(Math.sqrt(squares / 8), within(1e-9));
    }

    private List<Point> pearson() {
      return ReferenceData.rows("york/pearson-york.csv").stream()
          .map(row -> new Point(row[0], row[1], 1 / Math.sqrt(row[2]), 1 / Math.sqrt(row[3])))
          .toList();
    }

    private List<Point> points(String file) {
      return ReferenceData.rows(file).stream().map(row -> new Point(row[0], row[1], 0, 0)).toList();
    }
  }

  /** Hipparchus, a general-purpose numerical library, on random problems. */
  @Nested
  class SecondOpinion {

    @Test
    void onLinesByScatter() {
      Random random = new Random(1);
      for (int i = 0; i < 200; i++) {
        List<Point> points = randomPoints(random);
        SimpleRegression library = new SimpleRegression();
        points.forEach(point -> library.addData(point.x(), point.y()));
        Line line = LineFit.byScatter(points, false);
        assertClose(line.slope(), library.getSlope());
        assertClose(line.intercept(), library.getIntercept());
        assertClose(line.slopeUncertainty(), library.getSlopeStdErr());
        assertClose(line.interceptUncertainty(), library.getInterceptStdErr());
        assertClose(line.residualDeviation(), Math.sqrt(library.getMeanSquareError()));
      }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void onWeightedLines(boolean throughOrigin) {
      Random random = new Random(2);
      for (int i = 0; i < 200; i++) {
        List<Point> points = map(randomPoints(random), p -> new Point(p.x(), p.y(), 0, p.uy()));
        OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
        library.setNoIntercept(true);
        library.newSampleData(
            points.stream().mapToDouble(p -> p.y() / p.uy()).toArray(),
            points.stream()
                .map(
                    p ->
                        throughOrigin
                            ? new double[] {p.x() / p.uy()}
                            : new double[] {p.x() / p.uy(), 1 / p.uy()})
                .toArray(double[][]::new));
        double scale = Math.sqrt(library.estimateErrorVariance());
        Line line = LineFit.byUncertainties(points, throughOrigin);
        assertClose(line.slope(), library.estimateRegressionParameters()[0]);
        assertClose(
            line.slopeUncertainty(),
            library.estimateRegressionParametersStandardErrors()[0] / scale);
        assertClose(line.chiSquared().orElseThrow(), library.calculateResidualSumOfSquares());
        if (!throughOrigin) {
          assertClose(line.intercept(), library.estimateRegressionParameters()[1]);
          assertClose(
              line.interceptUncertainty(),
              library.estimateRegressionParametersStandardErrors()[1] / scale);
        }
      }
    }

    // The same problem put differently: slope, intercept and every true x as parameters of one
    // non-linear fit, whose covariance at the solution gives the uncertainties. The library's
    // search
    // stops short of the minimum by a millionth of an uncertainty or so
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void onErrorsInBothVariables(boolean throughOrigin) {
      Random random = new Random(3);
      for (int i = 0; i < 100; i++) {
        List<Point> points = randomPoints(random);
        Line line = LineFit.byUncertainties(points, throughOrigin);
        Optimum optimum = fullFit(points, line, throughOrigin);
        double[] sigma = optimum.getSigma(1e-14).toArray();
        assertThat(line.slope()).isCloseTo(optimum.getPoint().getEntry(0), within(1e-5 * sigma[0]));
        assertThat(line.slopeUncertainty()).isCloseTo(sigma[0], relative(1e-5));
        assertThat(line.chiSquared().orElseThrow())
            .isCloseTo(optimum.getCost() * optimum.getCost(), relative(1e-9));
        if (!throughOrigin) {
          assertThat(line.intercept())
              .isCloseTo(optimum.getPoint().getEntry(1), within(1e-5 * sigma[1]));
          assertThat(line.interceptUncertainty()).isCloseTo(sigma[1], relative(1e-5));
        }
      }
    }

    private Optimum fullFit(List<Point> points, Line start, boolean throughOrigin) {
      int n = points.size();
      int leading = throughOrigin ? 1 : 2;
      double[] first = new double[leading + n];
      first[leading - 1] = start.intercept();
      first[0] = start.slope() * 1.001;
      IntStream.range(0, n).forEach(i -> first[leading + i] = points.get(i).x());
      return new LevenbergMarquardtOptimizer()
          .withCostRelativeTolerance(1e-15)
          .withParameterRelativeTolerance(1e-15)
          .withOrthoTolerance(1e-15)
          .optimize(
              new LeastSquaresBuilder()
                  .start(first)
                  .target(new double[2 * n])
                  .maxEvaluations(1000)
                  .maxIterations(1000)
                  .model(vector -> full(points, vector, leading))
                  .build());
    }

    private Pair<RealVector, RealMatrix> full(List<Point> points, RealVector vector, int leading) {
      int n = points.size();
      double[] residuals = new double[2 * n];
      RealMatrix jacobian = MatrixUtils.createRealMatrix(2 * n, leading + n);
      double slope = vector.getEntry(0);
      double intercept = leading == 1 ? 0 : vector.getEntry(1);
      for (int i = 0; i < n; i++) {
        Point p = points.get(i);
        double x = vector.getEntry(leading + i);
        residuals[i] = (x - p.x()) / p.ux();
        residuals[n + i] = (intercept + slope * x - p.y()) / p.uy();
        jacobian.setEntry(i, leading + i, 1 / p.ux());
        jacobian.setEntry(n + i, leading + i, slope / p.uy());
        jacobian.setEntry(n + i, 0, x / p.uy());
        if (leading == 2) {
          jacobian.setEntry(n + i, 1, 1 / p.uy());
        }
      }
      return new Pair<>(new ArrayRealVector(residuals, false), jacobian);
    }
  }

  @Nested
  class Laws {

    @Test
    void unitsAndZerosDoNotMatter() {
      Random random = new Random(11);
      for (int i = 0; i < 200; i++) {
        List<Point> points = randomPoints(random);
        double unitX = Math.pow(10, random.nextInt(200) - 100);
        double unitY = -Math.pow(10, random.nextInt(200) - 100);
        double zeroX = 5 * random.nextGaussian();
        double zeroY = 5 * random.nextGaussian();
        UnaryOperator<Point> change =
            p ->
                new Point(
                    unitX * (p.x() + zeroX),
                    unitY * (p.y() + zeroY),
                    unitX * p.ux(),
                    -unitY * p.uy());
        double place = unitX * (3 + zeroX);
        for (Fit fit : FITS) {
          Line plain = fit.line(points);
          Line changed = fit.line(map(points, change));
          assertClose(changed.slope(), plain.slope() * unitY / unitX);
          assertClose(changed.slopeUncertainty(), -plain.slopeUncertainty() * unitY / unitX);
          assertClose(changed.at(place), unitY * (plain.at(3) + zeroY));
          assertClose(changed.uncertaintyAt(place), -unitY * plain.uncertaintyAt(3));
          assertClose(changed.chiSquared().orElse(1), plain.chiSquared().orElse(1));
        }
      }
    }

    @Test
    void theOrderOfThePointsDoesNotMatter() {
      Random random = new Random(12);
      for (int i = 0; i < 100; i++) {
        List<Point> points = randomPoints(random);
        List<Point> shuffled = new ArrayList<>(points);
        Collections.shuffle(shuffled, random);
        for (Fit fit : FITS) {
          assertSame(fit.line(points), fit.line(shuffled));
        }
      }
    }

    @Test
    void exchangingTheAxesInvertsTheSlope() {
      Random random = new Random(13);
      for (int i = 0; i < 200; i++) {
        List<Point> points = randomPoints(random);
        for (boolean throughOrigin : new boolean[] {false, true}) {
          Line line = LineFit.byUncertainties(points, throughOrigin);
          Line exchanged =
              LineFit.byUncertainties(
                  map(points, p -> new Point(p.y(), p.x(), p.uy(), p.ux())), throughOrigin);
          assertClose(exchanged.slope(), 1 / line.slope());
          assertClose(
              exchanged.slopeUncertainty(),
              line.slopeUncertainty() / (line.slope() * line.slope()));
          assertClose(exchanged.chiSquared().orElseThrow(), line.chiSquared().orElseThrow());
        }
      }
    }

    @Test
    void everyPointTwiceHalvesTheVariances() {
      Random random = new Random(14);
      for (int i = 0; i < 100; i++) {
        List<Point> points = randomPoints(random);
        List<Point> twice = new ArrayList<>(points);
        twice.addAll(points);
        Line once = LineFit.byUncertainties(points, false);
        Line doubled = LineFit.byUncertainties(twice, false);
        assertClose(doubled.slope(), once.slope());
        assertClose(doubled.slopeUncertainty(), once.slopeUncertainty() / Math.sqrt(2));
        assertClose(doubled.interceptUncertainty(), once.interceptUncertainty() / Math.sqrt(2));
        assertClose(doubled.chiSquared().orElseThrow(), 2 * once.chiSquared().orElseThrow());
      }
    }

    @Test
    void tinyErrorsInXAreNone() {
      Random random = new Random(15);
      for (int i = 0; i < 100; i++) {
        List<Point> points = randomPoints(random);
        Line exact =
            LineFit.byUncertainties(map(points, p -> new Point(p.x(), p.y(), 0, p.uy())), false);
        Line tiny =
            LineFit.byUncertainties(map(points, p -> new Point(p.x(), p.y(), 1e-9, p.uy())), false);
        assertThat(tiny.slope()).isCloseTo(exact.slope(), relative(1e-9));
        assertThat(tiny.slopeUncertainty()).isCloseTo(exact.slopeUncertainty(), relative(1e-9));
      }
    }

    @Test
    void errorsInXAloneGiveTheLineOfXOnY() {
      Random random = new Random(16);
      for (int i = 0; i < 100; i++) {
        List<Point> points = randomPoints(random);
        Line line =
            LineFit.byUncertainties(map(points, p -> new Point(p.x(), p.y(), p.ux(), 0)), false);
        Line exchanged =
            LineFit.byUncertainties(map(points, p -> new Point(p.y(), p.x(), 0, p.ux())), false);
        assertClose(line.slope(), 1 / exchanged.slope());
        assertClose(line.chiSquared().orElseThrow(), exchanged.chiSquared().orElseThrow());
      }
    }

    // The least chi-squared over 4,000 directions, by its definition
    @Test
    void noOtherDirectionHasALowerChiSquared() {
      Random random = new Random(17);
      for (int i = 0; i < 200; i++) {
        List<Point> points = scattered(random);
        double found = LineFit.byUncertainties(points, false).chiSquared().orElseThrow();
        double lowest =
            IntStream.range(0, 4000)
                .mapToDouble(k -> chiSquared(points, Math.tan(Math.PI * (k + 0.5) / 4000)))
                .min()
                .orElseThrow();
        assertThat(found).isLessThanOrEqualTo(lowest * (1 + 1e-12));
      }
    }

    private static double chiSquared(List<Point> points, double slope) {
      double[] variances =
          points.stream()
              .mapToDouble(p -> p.uy() * p.uy() + slope * slope * p.ux() * p.ux())
              .toArray();
      double weights = 0;
      double moment = 0;
      for (int i = 0; i < variances.length; i++) {
        weights += 1 / variances[i];
        moment += (points.get(i).y() - slope * points.get(i).x()) / variances[i];
      }
      double sum = 0;
      for (int i = 0; i < variances.length; i++) {
        double distance = points.get(i).y() - slope * points.get(i).x() - moment / weights;
        sum += distance * distance / variances[i];
      }
      return sum;
    }
  }

  @Nested
  class DifficultData {

    @Test
    void farFromTheOriginKeepItsDigits() {
      // on y = x/4 exactly, all numbers representable
      List<Point> points =
          IntStream.range(0, 9).mapToObj(i -> new Point(1e15 + i, 1e12 + i / 4.0, 0, 0.5)).toList();
      Line line = LineFit.byUncertainties(points, false);
      assertThat(line.slope()).isEqualTo(0.25);
      assertThat(line.chiSquared().orElseThrow()).isZero();
      assertThat(line.slopeUncertainty()).isCloseTo(0.5 / Math.sqrt(60), relative(1e-14));
    }

    @Test
    void ofAnySizeThatADoubleHoldsAreFitted() {
      for (double size : new double[] {1e-300, 1e-160, 1e160, 1e300}) {
        List<Point> points =
            IntStream.range(0, 5)
                .mapToObj(i -> new Point(size * i, size * (2 * i + i % 2), 0, 0))
                .toList();
        assertThat(LineFit.byScatter(points, false).slope()).isCloseTo(2, within(1e-14));
        assertThat(LineFit.byScatter(points, true).slope()).isCloseTo(2 + 4 / 30.0, within(1e-14));
      }
    }

    @Test
    void withVeryDifferentWeightsKeepTheDigitsOfTheLightPoints() {
      // the first point is exact in effect, so the line turns about it: slope by the others alone
      List<Point> points =
          List.of(
              new Point(0.1, 0.3, 0, 1e-8),
              new Point(1.1, 2.3, 0, 1),
              new Point(2.1, 4.4, 0, 1),
              new Point(3.1, 6.2, 0, 1));
      // through (0.1, 0.3): sum(dx dy)/sum(dx²) = (1*2 + 2*4.1 + 3*5.9)/14
      assertThat(LineFit.byUncertainties(points, false).slope())
          .isCloseTo((2 + 8.2 + 17.7) / 14, within(1e-13));
    }

    @Test
    void areRefusedInWords() {
      Point low = new Point(1, 2, 0.1, 0.1);
      Point high = new Point(1, 3, 0.1, 0.1);
      assertRefused(List.of(low, high, low), "every x is equal");
      assertRefused(List.of(low), "a line needs at least 2 points");
      assertThatThrownBy(() -> LineFit.byScatter(List.of(low, new Point(2, 2, 0, 0)), false))
          .hasMessageContaining("a line needs at least 3 points");
      assertRefused(
          List.of(low, high, new Point(2, 2, 0, 0)), "a point has no uncertainty in x nor in y");
      assertRefused(
          List.of(low, high, new Point(2, 2, 0, 1e-12)), "more than 100 million times another's");
      assertRefused(
          List.of(
              new Point(1e-200, 1e200, 0, 1e190),
              new Point(2e-200, 2e200, 0, 1e190),
              new Point(3e-200, 3e200, 0, 1e190)),
          "too large, too small or too far apart");
      assertThatThrownBy(
              () -> LineFit.byScatter(List.of(new Point(0, 1, 0, 0), new Point(0, 2, 0, 0)), true))
          .hasMessageContaining("every x is 0");
    }

    @Test
    void withoutADirectionDoNotSettle() {
      List<Point> square =
          List.of(
              new Point(1, 1, 1, 1),
              new Point(1, -1, 1, 1),
              new Point(-1, 1, 1, 1),
              new Point(-1, -1, 1, 1));
      assertThatThrownBy(() -> LineFit.byUncertainties(square, false))
          .isInstanceOf(FitException.class)
          .hasMessageContaining("no clear line");
    }

    private static void assertRefused(List<Point> points, String words) {
      assertThatThrownBy(() -> LineFit.byUncertainties(points, false))
          .isInstanceOf(FitException.class)
          .hasMessageContaining(words);
    }
  }

  private interface Fit {
    Line line(List<Point> points);
  }

  private static final List<Fit> FITS =
      List.of(
          points -> LineFit.byScatter(points, false),
          points ->
              LineFit.byUncertainties(map(points, p -> new Point(p.x(), p.y(), 0, p.uy())), false),
          points -> LineFit.byUncertainties(points, false));

  /** Points about a line that is neither level nor upright, with believable error bars. */
  private static List<Point> randomPoints(Random random) {
    double slope = (random.nextBoolean() ? 1 : -1) * Math.exp(random.nextGaussian());
    double intercept = 5 * random.nextGaussian();
    return IntStream.range(0, 4 + random.nextInt(20))
        .mapToObj(
            i -> {
              double x = i + random.nextDouble();
              double ux = 0.05 + 0.3 * random.nextDouble();
              double uy = slope * slope * 0.1 + 0.3 * random.nextDouble();
              return new Point(
                  x + ux * random.nextGaussian(),
                  intercept + slope * x + uy * random.nextGaussian(),
                  ux,
                  uy);
            })
        .toList();
  }

  /** Points with error bars as large as the whole line. */
  private static List<Point> scattered(Random random) {
    return IntStream.range(0, 3 + random.nextInt(10))
        .mapToObj(
            i ->
                new Point(
                    random.nextGaussian(),
                    random.nextGaussian(),
                    0.3 + random.nextDouble(),
                    0.3 + random.nextDouble()))
        .toList();
  }

  private static List<Point> map(List<Point> points, UnaryOperator<Point> change) {
    return points.stream().map(change).toList();
  }

  private static void assertSame(Line actual, Line expected) {
    assertClose(actual.slope(), expected.slope());
    assertClose(actual.slopeUncertainty(), expected.slopeUncertainty());
    assertThat(actual.intercept()).isCloseTo(expected.intercept(), within(1e-11));
    assertClose(actual.interceptUncertainty(), expected.interceptUncertainty());
    assertClose(actual.residualDeviation(), expected.residualDeviation());
  }

  private static void assertClose(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, relative(1e-9));
  }

  private static Percentage relative(double part) {
    return Percentage.withPercentage(100 * part);
  }
}
