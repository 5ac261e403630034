package tenthmark.measurement.carrying;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import tenthmark.measurement.wording.Message;

/**
 * The combination of correlated inputs: the square of the total is the sum of r(i,j) c(i)u(i)
 * c(j)u(j) over all pairs (JCGM 100:2008, 5.2.2, equation 16).
 */
public final class Correlations implements Combination {

  /** A coefficient rounded to three decimals may push an eigenvalue this far below zero. */
  private static final double ROUNDING = 1e-3;

  private static final double EXACT = 1e-12;

  private final double[][] coefficients;

  private Correlations(double[][] coefficients) {
    this.coefficients = coefficients;
  }

  /**
   * Correlation coefficients of the inputs, a square matrix with the inputs in order.
   *
   * @throws IllegalArgumentException if {@link #problemOf} finds one
   */
  public static Correlations of(double[][] coefficients) {
    problemOf(coefficients)
        .ifPresent(
            problem -> {
              throw new IllegalArgumentException(problem.toString());
            });
    return new Correlations(
        Arrays.stream(coefficients).map(double[]::clone).toArray(double[][]::new));
  }

  /** None between so many inputs. */
  public static Correlations none(int inputs) {
    return new Correlations(MatrixUtils.createRealIdentityMatrix(inputs).getData());
  }

  /** A matrix whose product with its transpose these coefficients are. */
  double[][] root() {
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(coefficients));
    double[] lengths =
        Arrays.stream(eigen.getEigenvalues()).map(value -> Math.sqrt(Math.max(0, value))).toArray();
    return eigen.getV().multiply(MatrixUtils.createRealDiagonalMatrix(lengths)).getData();
  }

  /**
   * The covariance of two results of the same inputs, the sum of r(i,j) c(i)u(i) d(j)u(j) with c
   * and d the sensitivity coefficients of the two (JCGM 100:2008, F.1.2.3 and H.2.3).
   */
  public double covariance(double[] first, double[] second) {
    double sum = 0;
    for (int i = 0; i < first.length; i++) {
      for (int j = 0; j < second.length; j++) {
        sum += coefficients[i][j] * first[i] * second[j];
      }
    }
    return sum;
  }

  /** What is wrong with a square matrix of coefficients. */
  public static Optional<Message> problemOf(double[][] coefficients) {
    for (int i = 0; i < coefficients.length; i++) {
      if (Math.abs(coefficients[i][i] - 1) > EXACT) {
        return Optional.of(Message.of("correlations.diagonal", i + 1));
      }
      for (int j = 0; j < i; j++) {
        if (Math.abs(coefficients[i][j] - coefficients[j][i]) > EXACT) {
          return Optional.of(Message.of("correlations.symmetry", i + 1, j + 1));
        }
      }
    }
    double[] eigenvalues =
        new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(coefficients))
            .getEigenvalues();
    return Arrays.stream(eigenvalues).min().orElse(0) < -ROUNDING
        ? Optional.of(Message.of("correlations.contradict"))
        : Optional.empty();
  }

  @Override
  public double total(double[] contributions) {
    double square = Arrays.stream(parts(contributions)).sum();
    return Math.sqrt(Math.max(0, square));
  }

  @Override
  public double[] shares(double[] contributions) {
    double[] parts = parts(contributions);
    double square = Arrays.stream(parts).sum();
    return Arrays.stream(parts).map(part -> part / square).toArray();
  }

  /** For each input its own square and half of what it has in common with each other one. */
  private double[] parts(double[] contributions) {
    double[] parts = new double[contributions.length];
    for (int i = 0; i < parts.length; i++) {
      for (int j = 0; j < parts.length; j++) {
        parts[i] += coefficients[i][j] * contributions[i] * contributions[j];
      }
    }
    return parts;
  }
}
