package tenthmark.measurement.line;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * The sum of several variables, each times a coefficient, that comes nearest to measured values by
 * least squares; a parabola is one of x and x². Computed by QR decomposition (Hipparchus) of the
 * variables about their means and on one scale, as their sizes would cost digits otherwise.
 */
public final class LinearFit {

  /** Variables that depend on each other leave less than this of a length of 1. */
  private static final double DEPENDENT = 1e-10;

  private final double[] coefficients;
  private final double[] uncertainties;
  private final double intercept;
  private final double interceptUncertainty;
  private final double explainedSquares;
  private final double residualSquares;
  private final int freedom;

  private LinearFit(double[] y, double[][] x, boolean throughOrigin) {
    List<Variable> variables =
        Arrays.stream(MatrixUtils.createRealMatrix(x).transpose().getData())
            .map(values -> Variable.of(values, throughOrigin))
            .toList();
    double height = throughOrigin ? 0 : mean(y);
    double[] centred = less(y, height);
    OLSMultipleLinearRegression regression = regression(centred, variables);
    RealVector scaled = vector(regression.estimateRegressionParameters());
    RealMatrix spread =
        MatrixUtils.createRealMatrix(regression.estimateRegressionParametersVariance());
    RealVector scales = vector(variables.stream().mapToDouble(Variable::scale).toArray());
    RealVector means = vector(variables.stream().mapToDouble(Variable::mean).toArray());
    RealVector offsets = means.ebeDivide(scales);
    this.residualSquares = regression.calculateResidualSumOfSquares();
    this.freedom = y.length - variables.size() - (throughOrigin ? 0 : 1);
    this.explainedSquares = Math.max(0, squares(centred) - residualSquares);
    double deviation = residualDeviation();
    this.coefficients = scaled.ebeDivide(scales).toArray();
    this.uncertainties =
        IntStream.range(0, variables.size())
            .mapToDouble(
                i -> deviation * Math.sqrt(spread.getEntry(i, i)) / variables.get(i).scale())
            .toArray();
    this.intercept = height - scaled.dotProduct(offsets);
    this.interceptUncertainty =
        throughOrigin
            ? 0
            : deviation * Math.sqrt(1.0 / y.length + offsets.dotProduct(spread.operate(offsets)));
  }

  /**
   * A variable about its mean, or about 0 through the origin, and of length 1.
   *
   * @param mean what was subtracted
   * @param scale what it was then divided by
   */
  private record Variable(double mean, double scale, double[] values) {

    static Variable of(double[] measured, boolean throughOrigin) {
      double mean = throughOrigin ? 0 : LinearFit.mean(measured);
      RealVector centred = vector(less(measured, mean));
      double scale = centred.getNorm();
      if (scale == 0) {
        throw FitException.of(throughOrigin ? "fit.x.zero" : "fit.x.equal");
      }
      return new Variable(mean, scale, centred.mapDivide(scale).toArray());
    }
  }

  private static OLSMultipleLinearRegression regression(double[] y, List<Variable> variables) {
    double[][] columns = variables.stream().map(Variable::values).toArray(double[][]::new);
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression(DEPENDENT);
    regression.setNoIntercept(true);
    regression.newSampleData(y, MatrixUtils.createRealMatrix(columns).transpose().getData());
    return regression;
  }

  /**
   * Fits y to the variables.
   *
   * @param x a row for each value of y, a column for each variable
   * @param throughOrigin whether there is no intercept
   * @throws FitException if the values are too few or the variables depend on each other
   */
  public static LinearFit of(double[] y, double[][] x, boolean throughOrigin) {
    int fitted = x[0].length + (throughOrigin ? 0 : 1);
    if (y.length <= fitted) {
      throw FitException.of("fit.few", fitted, fitted + 1);
    }
    try {
      return new LinearFit(y, x, throughOrigin);
    } catch (MathIllegalArgumentException singular) {
      throw FitException.of("fit.dependent");
    }
  }

  private static RealVector vector(double[] values) {
    return new ArrayRealVector(values, false);
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  private static double[] less(double[] values, double mean) {
    return Arrays.stream(values).map(value -> value - mean).toArray();
  }

  private static double squares(double[] values) {
    return Arrays.stream(values).map(value -> value * value).sum();
  }

  /** What it gives for values of the variables. */
  public double at(double... x) {
    return intercept
        + IntStream.range(0, coefficients.length).mapToDouble(i -> coefficients[i] * x[i]).sum();
  }

  /** How many variables there are. */
  public int variables() {
    return coefficients.length;
  }

  /** The coefficient of a variable, counted from 0. */
  public double coefficient(int variable) {
    return coefficients[variable];
  }

  /** The standard uncertainty of a coefficient, from the scatter about the fit. */
  public double uncertainty(int variable) {
    return uncertainties[variable];
  }

  /** The intercept; 0 through the origin. */
  public double intercept() {
    return intercept;
  }

  /** The standard uncertainty of the intercept; 0 through the origin. */
  public double interceptUncertainty() {
    return interceptUncertainty;
  }

  /** The squares of the fit about the mean of y, or about 0 through the origin. */
  public double explainedSquares() {
    return explainedSquares;
  }

  /** The squares of what is left between the values and the fit. */
  public double residualSquares() {
    return residualSquares;
  }

  /** The values less what was fitted. */
  public int freedom() {
    return freedom;
  }

  /** The standard deviation of the values about the fit. */
  public double residualDeviation() {
    return Math.sqrt(residualSquares / freedom);
  }

  /** The coefficient of determination, the share of the squares that the fit explains. */
  public double determination() {
    return explainedSquares / (explainedSquares + residualSquares);
  }

  /** The explained squares per variable over the residual ones per degree of freedom. */
  public double f() {
    return explainedSquares / variables() / (residualSquares / freedom);
  }
}
