package tenthmark.measurement.line;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The line that makes chi-squared least, on coordinates of size 1: the condition and the
 * uncertainties of York, Evensen, Martínez and De Basabe Delgado, Am. J. Phys. 72 (2004) 367, for
 * uncorrelated uncertainties.
 *
 * <p>York's iteration on the slope can wander off where the points scatter widely. Here the same
 * condition is a function of the line's direction, and every minimum lies where it changes sign:
 * each one is bracketed and the lowest is taken.
 */
final class LeastSquares {

  private static final int DIRECTIONS = 180;
  private static final int MOST_STEPS = 200;
  private static final double PRECISION = 1e-15;
  private static final double ROUNDING = 1e-14;
  private static final int ORDER = 5;

  private final double[] u;
  private final double[] v;
  private final double[] varianceU;
  private final double[] varianceV;
  private final boolean throughOrigin;

  /** Not both variances of a point may be zero. */
  LeastSquares(
      double[] u, double[] v, double[] varianceU, double[] varianceV, boolean throughOrigin) {
    this.u = u;
    this.v = v;
    this.varianceU = varianceU;
    this.varianceV = varianceV;
    this.throughOrigin = throughOrigin;
  }

  /**
   * A line and its uncertainties; the names are those of {@link Line}.
   *
   * @param weightedSquares sum of w (v - line)²
   * @param squares sum of (v - line)²
   */
  record Solution(
      double slope,
      double slopeUncertainty,
      double centre,
      double height,
      double heightUncertainty,
      double weightedSquares,
      double squares) {}

  /**
   * The line with the least sum of weighted squares; empty if no direction is better than others.
   */
  Optional<Solution> solve() {
    if (Arrays.stream(varianceU).allMatch(variance -> variance == 0)) {
      return Optional.of(new Weighted(1, new Weighted(1, 0).slopeOfVOnU()).solution());
    }
    double[] gains =
        IntStream.rangeClosed(0, DIRECTIONS).mapToDouble(i -> gain(angle(i))).toArray();
    return IntStream.range(0, DIRECTIONS)
        .filter(i -> gains[i] > 0 && gains[i + 1] <= 0)
        .mapToDouble(i -> bestBetween(angle(i), angle(i + 1)))
        .mapToObj(angle -> towards(angle).solution())
        .min(Comparator.comparingDouble(Solution::weightedSquares));
  }

  /** Half a step off, so that no direction is exactly level or upright. */
  private static double angle(int direction) {
    return Math.PI * ((direction + 0.5) / DIRECTIONS - 0.5);
  }

  private double bestBetween(double from, double to) {
    return new BracketingNthOrderBrentSolver(PRECISION, PRECISION, ORDER)
        .solve(MOST_STEPS, this::gain, from, to);
  }

  private double gain(double angle) {
    return towards(angle).gain();
  }

  private Weighted towards(double angle) {
    return new Weighted(Math.cos(angle), Math.sin(angle));
  }

  /** The points weighted for one direction of the line. */
  private final class Weighted {

    private final double along;
    private final double up;
    private final double[] weights = new double[u.length];
    private final double totalWeight;
    private final double centreU;
    private final double centreV;

    Weighted(double along, double up) {
      this.along = along;
      this.up = up;
      double total = 0;
      double momentU = 0;
      double momentV = 0;
      for (int i = 0; i < u.length; i++) {
        weights[i] = 1 / (along * along * varianceV[i] + up * up * varianceU[i]);
        total += weights[i];
        momentU += weights[i] * u[i];
        momentV += weights[i] * v[i];
      }
      this.totalWeight = total;
      this.centreU = throughOrigin ? 0 : momentU / total;
      this.centreV = throughOrigin ? 0 : momentV / total;
    }

    double slopeOfVOnU() {
      double moment = 0;
      double spread = 0;
      for (int i = 0; i < u.length; i++) {
        moment += weights[i] * (u[i] - centreU) * (v[i] - centreV);
        spread += weights[i] * (u[i] - centreU) * (u[i] - centreU);
      }
      return moment / spread;
    }

    /**
     * How fast chi-squared falls as the line turns up, but for a positive factor; 0 if that cannot
     * be told from rounding.
     */
    double gain() {
      double gain = 0;
      double size = 0;
      for (int i = 0; i < u.length; i++) {
        double part = weights[i] * adjusted(i) * residual(i);
        gain += part;
        size += Math.abs(part);
      }
      return Math.abs(gain) <= ROUNDING * size ? 0 : gain;
    }

    /** Where the adjusted point lies along the line, from the centre. */
    private double adjusted(int i) {
      return weights[i]
          * (along * (u[i] - centreU) * varianceV[i] + up * (v[i] - centreV) * varianceU[i]);
    }

    private double residual(int i) {
      return along * (v[i] - centreV) - up * (u[i] - centreU);
    }

    Solution solution() {
      double shift = throughOrigin ? 0 : adjustedCentre();
      double spread = 0;
      double weightedSquares = 0;
      double squares = 0;
      for (int i = 0; i < u.length; i++) {
        double fromCentre = adjusted(i) - shift;
        spread += weights[i] * fromCentre * fromCentre;
        weightedSquares += weights[i] * residual(i) * residual(i);
        squares += residual(i) * residual(i);
      }
      return new Solution(
          up / along,
          1 / (along * along * Math.sqrt(spread)),
          centreU + along * shift,
          centreV + up * shift,
          throughOrigin ? 0 : 1 / Math.abs(along * Math.sqrt(totalWeight)),
          weightedSquares,
          squares / (along * along));
    }

    private double adjustedCentre() {
      double moment = 0;
      for (int i = 0; i < u.length; i++) {
        moment += weights[i] * adjusted(i);
      }
      return moment / totalWeight;
    }
  }
}
