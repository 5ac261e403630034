package tenthmark.measurement.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.MathArrays;
import org.hipparchus.util.Pair;
import tenthmark.measurement.curve.Curve.Estimate;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Linearised;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.line.FitException;
import tenthmark.measurement.line.Point;

/**
 * Fits a curve of any model to points by least squares: Levenberg and Marquardt's method with exact
 * derivatives, then Newton steps for the last digits. It finds the least sum of squares near the
 * start, which need not be the least of all.
 */
public final class CurveFit {

  private static final int MOST_STEPS = 1000;
  private static final int MOST_NEWTON_STEPS = 200;
  private static final double PRECISION = 1e-15;

  /** A search that stops with a Newton step above this part of the residuals has not arrived. */
  private static final double ARRIVED = 1e-4;

  /** Residuals below this part of the largest y are rounding. */
  private static final double ROUNDING = 1e-12;

  private final Model model;
  private final List<Point> points;
  private final List<Guess> start;
  private final double[] sizes;
  private final double unit;
  private final double[] units;

  private CurveFit(Model model, List<Point> points, List<Guess> start, double[] sizes) {
    if (points.size() <= start.size()) {
      throw FitException.of("fit.few", start.size(), start.size() + 1);
    }
    this.model = model;
    this.points = points;
    this.start = start;
    this.sizes = sizes;
    double largest =
        IntStream.range(0, sizes.length)
            .mapToDouble(i -> Math.abs(points.get(i).y()) / sizes[i])
            .max()
            .orElseThrow();
    this.unit = largest == 0 ? 1 : largest;
    this.units =
        start.stream().mapToDouble(Guess::value).map(v -> v == 0 ? 1 : Math.abs(v)).toArray();
  }

  /**
   * The curve that makes the sum of (y - curve)² least, with uncertainties from the scatter about
   * it.
   *
   * @param model with x as its first input and the parameters after it
   * @param start one guess for each parameter
   * @throws FitException if there are too few points or they determine no curve near the start
   */
  public static Curve byScatter(Model model, List<Point> points, List<Guess> start) {
    double[] equal = new double[points.size()];
    Arrays.fill(equal, 1);
    CurveFit fit = new CurveFit(model, points, start, equal);
    Step end = fit.end();
    return fit.curve(end, end.cost() / Math.sqrt(fit.freedom()), OptionalDouble.empty());
  }

  /**
   * The curve that makes the sum of ((y - curve)/uy)² least, with uncertainties from uy alone.
   *
   * @param model with x as its first input and the parameters after it
   * @param points each with a uy greater than zero; ux is not used
   * @param start one guess for each parameter
   * @throws FitException if there are too few points or they determine no curve near the start
   */
  public static Curve byUncertainties(Model model, List<Point> points, List<Guess> start) {
    CurveFit fit =
        new CurveFit(model, points, start, points.stream().mapToDouble(Point::uy).toArray());
    Step end = fit.end();
    double root = end.cost() * fit.unit;
    return fit.curve(end, 1 / fit.unit, OptionalDouble.of(root * root));
  }

  private int freedom() {
    return points.size() - start.size();
  }

  private Curve curve(Step end, double scale, OptionalDouble chiSquared) {
    List<Estimate> estimates = new ArrayList<>();
    for (int k = 0; k < start.size(); k++) {
      estimates.add(new Estimate(start.get(k).name(), end.at(k), scale * end.uncertaintyFactor(k)));
    }
    double squares = 0;
    for (int i = 0; i < sizes.length; i++) {
      double residual = end.residual(i) * sizes[i] * unit;
      squares += residual * residual;
    }
    return new Curve(estimates, chiSquared, freedom(), Math.sqrt(squares / freedom()));
  }

  /** Where the sum of squares is least. */
  private Step end() {
    try {
      Step end = refined(new Step(search(first())));
      if (end.hasArrived()) {
        return end;
      }
      throw unsettled();
    } catch (FormulaException problem) {
      throw FitException.of("fit.near", problem.said());
    }
  }

  private Step refined(Step found) {
    Step step = found;
    for (int count = 0; count < MOST_NEWTON_STEPS; count++) {
      Step next = new Step(step.next());
      if (!(next.length() < step.length())) {
        break;
      }
      step = next;
    }
    return step;
  }

  private RealVector first() {
    RealVector first =
        new ArrayRealVector(
            start.stream().mapToDouble(g -> Math.signum(g.value())).toArray(), false);
    try {
      linearised(first);
    } catch (FormulaException problem) {
      throw FitException.of("fit.start", problem.said());
    }
    return first;
  }

  private RealVector search(RealVector first) {
    try {
      return new LevenbergMarquardtOptimizer()
          .withCostRelativeTolerance(PRECISION)
          .withParameterRelativeTolerance(PRECISION)
          .withOrthoTolerance(PRECISION)
          .optimize(
              new LeastSquaresBuilder()
                  .start(first)
                  .target(new double[sizes.length])
                  .model(this::linearisedOrFar)
                  .maxEvaluations(MOST_STEPS)
                  .maxIterations(MOST_STEPS)
                  .build())
          .getPoint();
    } catch (MathIllegalStateException problem) {
      throw unsettled();
    }
  }

  private static FitException unsettled() {
    return FitException.of("fit.unsettled");
  }

  /** A model that is not defined there is infinitely far off, so that the search turns back. */
  private Pair<RealVector, RealMatrix> linearisedOrFar(RealVector parameters) {
    try {
      return linearised(parameters);
    } catch (FormulaException undefined) {
      return new Pair<>(
          new ArrayRealVector(sizes.length, Double.POSITIVE_INFINITY),
          MatrixUtils.createRealMatrix(sizes.length, start.size()));
    }
  }

  /**
   * Residuals over their sizes, and their derivatives along the parameters, each in units of the
   * size of its guess.
   */
  private Pair<RealVector, RealMatrix> linearised(RealVector parameters) {
    double[] inputs = new double[1 + start.size()];
    for (int k = 0; k < units.length; k++) {
      inputs[1 + k] = parameters.getEntry(k) * units[k];
    }
    RealVector residuals = new ArrayRealVector(sizes.length);
    RealMatrix slopes = MatrixUtils.createRealMatrix(sizes.length, start.size());
    for (int i = 0; i < sizes.length; i++) {
      inputs[0] = points.get(i).x();
      Linearised linearised = model.linearisedAfter(1, inputs);
      residuals.setEntry(i, (linearised.value() - points.get(i).y()) / sizes[i] / unit);
      for (int k = 0; k < start.size(); k++) {
        slopes.setEntry(i, k, linearised.sensitivities()[k] * (units[k] / unit) / sizes[i]);
      }
    }
    return new Pair<>(residuals, slopes);
  }

  /** The sum of squares about one set of parameters, and the Newton step from there. */
  private final class Step {

    private static final double WORST_CONDITION = 1e11;

    private final RealVector parameters;
    private final RealVector residuals;
    private final double[] columnNorms = new double[start.size()];
    private final SingularValueDecomposition slopes;
    private final RealVector towards;

    Step(RealVector parameters) {
      Pair<RealVector, RealMatrix> linearised = linearised(parameters);
      this.parameters = parameters;
      this.residuals = linearised.getFirst();
      RealMatrix scaled = linearised.getSecond();
      for (int k = 0; k < columnNorms.length; k++) {
        columnNorms[k] = MathArrays.safeNorm(scaled.getColumn(k));
        if (columnNorms[k] == 0 || !Double.isFinite(columnNorms[k])) {
          throw FitException.of("fit.no.difference", start.get(k).name());
        }
        scaled.setColumnVector(k, scaled.getColumnVector(k).mapDivide(columnNorms[k]));
      }
      this.slopes = new SingularValueDecomposition(scaled);
      if (!(slopes.getConditionNumber() < WORST_CONDITION)) {
        throw indistinguishable();
      }
      this.towards = slopes.getSolver().solve(residuals.mapMultiply(-1));
    }

    private FitException indistinguishable() {
      int last = columnNorms.length - 1;
      RealVector direction = slopes.getV().getColumnVector(last);
      String names =
          IntStream.rangeClosed(0, last)
              .filter(k -> Math.abs(direction.getEntry(k)) > 0.1)
              .mapToObj(k -> start.get(k).name())
              .collect(Collectors.joining(", "));
      return FitException.of("fit.indistinguishable", names);
    }

    double at(int parameter) {
      return parameters.getEntry(parameter) * units[parameter];
    }

    double residual(int point) {
      return residuals.getEntry(point);
    }

    double cost() {
      return MathArrays.safeNorm(residuals.toArray());
    }

    /** How far the residuals would change. */
    double length() {
      return MathArrays.safeNorm(towards.toArray());
    }

    /**
     * Whether the sum of squares is least here. Where nothing but rounding is left of the residuals
     * the step must be small against the parameters instead, or the fit runs away.
     */
    boolean hasArrived() {
      return length() <= ARRIVED * cost()
          || (cost() <= ROUNDING
              && next().getLInfDistance(parameters) <= ARRIVED * (1 + parameters.getLInfNorm()));
    }

    RealVector next() {
      RealVector next = parameters.copy();
      for (int k = 0; k < columnNorms.length; k++) {
        next.addToEntry(k, towards.getEntry(k) / columnNorms[k]);
      }
      return next;
    }

    /** Root of the diagonal element of the inverse of the slopes' squares. */
    double uncertaintyFactor(int parameter) {
      double sum = 0;
      for (int k = 0; k < columnNorms.length; k++) {
        double part = slopes.getV().getEntry(parameter, k) / slopes.getSingularValues()[k];
        sum += part * part;
      }
      return Math.sqrt(sum) / columnNorms[parameter] * units[parameter];
    }
  }
}
