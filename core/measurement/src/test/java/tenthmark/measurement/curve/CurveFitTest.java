package tenthmark.measurement.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tenthmark.measurement.ReferenceData.assertDigits;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.measurement.ReferenceData;
import tenthmark.measurement.curve.Curve.Estimate;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.formula.NamedModel;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.Point;

class CurveFitTest {

  /**
   * NIST StRD, nonlinear regression: data and certified values (estimates, standard deviations,
   * residual sum of squares) as public repositories quote them; the starts of four sets and the
   * standard deviations of rat42's b2 and eckerle4's b1 from memory. From both of NIST's starts
   * every printed digit is reached.
   */
  @Nested
  class PublishedCases {

    @ParameterizedTest
    @CsvSource({
      // lower difficulty
      "misra1a, b1*(1-EXP(-b2*x)), 1.2455138894E-01, 12",
      "danwood, b1*x^b2, 4.3173084083E-03, 4",
      // average
      "mgh17, b1+b2*EXP(-x*b4)+b3*EXP(-x*b5), 5.4648946975E-05, 28",
      // higher
      "rat42, b1/(1+EXP(b2-b3*x)), 8.0565229338E+00, 6",
      "eckerle4, (b1/b2)*EXP(-0.5*((x-b3)/b2)^2), 1.4635887487E-03, 32",
      "mgh09, b1*(x^2+x*b2)/(x^2+x*b3+b4), 3.0750560385E-04, 7",
      "thurber, (b1+b2*x+b3*x^2+b4*x^3)/(1+b5*x+b6*x^2+b7*x^3), 5.6427082397E+03, 30"
    })
    void agreeFromBothStarts(String set, String model, String squares, int freedom) {
      List<Point> points = points(ReferenceData.rows("nist-strd/" + set + ".csv"));
      List<String[]> certified =
          ReferenceData.lines("nist-strd/certified-nonlinear.csv").stream()
              .map(line -> line.split(","))
              .filter(line -> line[0].equals(set))
              .toList();
      for (int start : new int[] {2, 3}) {
        List<Guess> guesses =
            certified.stream()
                .map(line -> new Guess(line[1], Double.parseDouble(line[start])))
                .toList();
        Curve curve = CurveFit.byScatter(model(model, guesses), points, guesses);
        for (int i = 0; i < guesses.size(); i++) {
          assertDigits(curve.estimates().get(i).value(), certified.get(i)[4], 10.3);
          assertDigits(curve.estimates().get(i).uncertainty(), certified.get(i)[5], 10.2);
        }
        assertDigits(freedom * Math.pow(curve.residualDeviation(), 2), squares, 10.3);
        assertThat(curve.freedom()).isEqualTo(freedom);
        assertThat(curve.chiSquared()).isEmpty();
      }
    }
  }

  /** Hipparchus' linear regression, on models that are linear in their parameters. */
  @Nested
  class SecondOpinion {

    @Test
    void onPolynomialsByScatter() {
      Random random = new Random(41);
      List<Guess> guesses = guesses("a", 1, "b", 1, "c", 1);
      Model model = model("a+b*x+c*x^2", guesses);
      for (int i = 0; i < 100; i++) {
        List<Point> points = parabola(random, 0.5);
        OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
        library.newSampleData(
            points.stream().mapToDouble(Point::y).toArray(),
            points.stream().map(p -> new double[] {p.x(), p.x() * p.x()}).toArray(double[][]::new));
        Curve curve = CurveFit.byScatter(model, points, guesses);
        assertEstimates(
            curve,
            library.estimateRegressionParameters(),
            library.estimateRegressionParametersStandardErrors());
        assertThat(curve.residualDeviation())
            .isCloseTo(library.estimateRegressionStandardError(), relative(1e-9));
      }
    }

    @Test
    void onPolynomialsByUncertainties() {
      Random random = new Random(42);
      List<Guess> guesses = guesses("a", 0, "b", 0, "c", 0);
      Model model = model("a+b*x+c*x^2", guesses);
      for (int i = 0; i < 100; i++) {
        List<Point> points = parabola(random, 3);
        OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
        library.setNoIntercept(true);
        library.newSampleData(
            points.stream().mapToDouble(p -> p.y() / p.uy()).toArray(),
            points.stream()
                .map(p -> new double[] {1 / p.uy(), p.x() / p.uy(), p.x() * p.x() / p.uy()})
                .toArray(double[][]::new));
        Curve curve = CurveFit.byUncertainties(model, points, guesses);
        double scale = Math.sqrt(library.estimateErrorVariance());
        double[] errors = library.estimateRegressionParametersStandardErrors();
        for (int k = 0; k < errors.length; k++) {
          errors[k] /= scale;
        }
        assertEstimates(curve, library.estimateRegressionParameters(), errors);
        assertThat(curve.chiSquared().orElseThrow())
            .isCloseTo(library.calculateResidualSumOfSquares(), relative(1e-9));
      }
    }

    private static List<Point> parabola(Random random, double uncertainty) {
      double bend = random.nextGaussian();
      return IntStream.range(0, 4 + random.nextInt(20))
          .mapToObj(
              i -> {
                double x = i + random.nextDouble();
                double uy = uncertainty * (0.1 + random.nextDouble());
                return new Point(x, 2 - x + bend * x * x + uy * random.nextGaussian(), 0, uy);
              })
          .toList();
    }

    private static void assertEstimates(Curve curve, double[] values, double[] errors) {
      for (int k = 0; k < values.length; k++) {
        Estimate estimate = curve.estimates().get(k);
        assertThat(estimate.uncertainty()).isCloseTo(errors[k], relative(1e-8));
        assertThat(estimate.value()).isCloseTo(values[k], within(1e-7 * errors[k]));
      }
    }
  }

  @Nested
  class Laws {

    @Test
    void unitsDoNotMatter() {
      Random random = new Random(43);
      for (int i = 0; i < 50; i++) {
        List<Point> points = decay(random);
        double unitX = Math.pow(10, random.nextInt(40) - 20);
        double unitY = Math.pow(10, random.nextInt(400) - 200);
        List<Point> changed =
            points.stream()
                .map(p -> new Point(unitX * p.x(), unitY * p.y(), 0, unitY * p.uy()))
                .toList();
        Curve plain = exponential(points, 5, 0.3);
        Curve scaled = exponential(changed, 5 * unitY, 0.3 / unitX);
        assertScaled(scaled.estimates().get(0), plain.estimates().get(0), unitY);
        assertScaled(scaled.estimates().get(1), plain.estimates().get(1), 1 / unitX);
        assertThat(scaled.chiSquared().orElseThrow())
            .isCloseTo(plain.chiSquared().orElseThrow(), relative(1e-7));
      }
    }

    @Test
    void theStartDoesNotMatterIfItIsNear() {
      Random random = new Random(44);
      for (int i = 0; i < 50; i++) {
        List<Point> points = decay(random);
        Curve one = exponential(points, 5, 0.3);
        Curve other = exponential(points, 12, 0.1);
        assertScaled(other.estimates().get(0), one.estimates().get(0), 1);
        assertScaled(other.estimates().get(1), one.estimates().get(1), 1);
      }
    }

    @Test
    void pointsOnACurveGiveThatCurve() {
      List<Point> points =
          IntStream.range(0, 8).mapToObj(i -> new Point(i, 3 * Math.exp(-0.25 * i), 0, 0)).toList();
      List<Guess> guesses = guesses("a", 1, "b", 0.1);
      Curve curve = CurveFit.byScatter(model("a*EXP(-b*x)", guesses), points, guesses);
      assertThat(curve.estimates().get(0).value()).isCloseTo(3, within(1e-13));
      assertThat(curve.estimates().get(1).value()).isCloseTo(0.25, within(1e-14));
      assertThat(curve.residualDeviation()).isLessThan(1e-14);
    }

    private static Curve exponential(List<Point> points, double a, double b) {
      List<Guess> guesses = guesses("a", a, "b", b);
      return CurveFit.byUncertainties(model("a*EXP(-b*x)", guesses), points, guesses);
    }

    private static List<Point> decay(Random random) {
      return IntStream.range(0, 12)
          .mapToObj(
              i -> {
                double uy = 0.05 + 0.1 * random.nextDouble();
                return new Point(i, 8 * Math.exp(-0.2 * i) + uy * random.nextGaussian(), 0, uy);
              })
          .toList();
    }

    private static void assertScaled(Estimate actual, Estimate expected, double unit) {
      assertThat(actual.value()).isCloseTo(expected.value() * unit, relative(1e-8));
      assertThat(actual.uncertainty()).isCloseTo(expected.uncertainty() * unit, relative(1e-6));
    }
  }

  @Nested
  class Refused {

    private final List<Point> points =
        IntStream.range(1, 9).mapToObj(i -> new Point(i, 2.0 * i + i % 2, 0, 1)).toList();

    @Test
    void areTooFewPoints() {
      assertRefused(
          "a*x+b", guesses("a", 1, "b", 1), points.subList(0, 2), "at least 3 are needed");
    }

    @Test
    void areParametersThatDoTheSame() {
      assertRefused(
          "a*b*x+c",
          guesses("a", 1, "b", 1, "c", 1),
          points,
          "these points cannot tell a, b apart");
      assertRefused("a*x+0*b", guesses("a", 1, "b", 1), points, "b makes no difference");
    }

    @Test
    void isAModelThatIsNotDefinedAtTheStart() {
      assertRefused("a*LN(b*x)", guesses("a", 1, "b", -1), points, "at the starting values: ");
    }

    // The sum of squares falls for ever as b grows
    @Test
    void isAFitThatRunsAway() {
      List<Point> falling =
          List.of(
              new Point(0, 1, 0, 1),
              new Point(1, 0, 0, 1),
              new Point(2, 0, 0, 1),
              new Point(3, 0, 0, 1));
      assertThatThrownBy(
              () -> {
                List<Guess> guesses = guesses("a", 1, "b", 1);
                CurveFit.byScatter(model("a*EXP(-b*x)", guesses), falling, guesses);
              })
          .isInstanceOf(FitException.class);
    }

    // A root's edge is the nearest the search can come; that is not a minimum
    @Test
    void isAStopAtTheEdgeOfWhatIsDefined() {
      List<Point> roots =
          IntStream.range(0, 6).mapToObj(i -> new Point(i, 1 + 3.0 * i, 0, 1)).toList();
      assertRefused("SQRT(b-1)+0*x+SQRT(2-b)", guesses("b", 1.5), roots, "");
    }

    private static void assertRefused(
        String formula, List<Guess> guesses, List<Point> points, String words) {
      assertThatThrownBy(() -> CurveFit.byScatter(model(formula, guesses), points, guesses))
          .isInstanceOf(FitException.class)
          .hasMessageContaining(words);
    }
  }

  @Test
  void aZeroXNeedsNoDerivativeThere() {
    List<Guess> guesses = guesses("a", 1, "c", 1);
    List<Point> points =
        List.of(new Point(0, 1, 0, 0), new Point(1, 3, 0, 0), new Point(4, 5, 0, 0));
    Curve curve = CurveFit.byScatter(model("a*SQRT(x)+c", guesses), points, guesses);
    assertThat(curve.estimates().get(0).value()).isCloseTo(2, within(1e-13));
    assertThat(curve.estimates().get(1).value()).isCloseTo(1, within(1e-13));
  }

  private static List<Point> points(List<double[]> rows) {
    return rows.stream().map(row -> new Point(row[0], row[1], 0, 0)).toList();
  }

  private static List<Guess> guesses(Object... namesAndValues) {
    List<Guess> guesses = new ArrayList<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      guesses.add(
          new Guess((String) namesAndValues[i], ((Number) namesAndValues[i + 1]).doubleValue()));
    }
    return guesses;
  }

  private static Model model(String formula, List<Guess> guesses) {
    List<String> names = new ArrayList<>(List.of("x"));
    guesses.forEach(guess -> names.add(guess.name()));
    return new NamedModel(new Formulas().withNames(formula), names);
  }

  private static Percentage relative(double part) {
    return Percentage.withPercentage(100 * part);
  }
}
