package tenthmark.measurement.line;

import java.util.OptionalDouble;

/**
 * A straight line fitted to points. It is kept by its height at the centre of the points, where
 * slope and height are uncorrelated, so that intercept and predictions need no cancelling
 * covariance term (JCGM 100:2008, H.3.5).
 *
 * @param slope in units of y per unit of x
 * @param slopeUncertainty standard uncertainty of the slope
 * @param centre the x where slope and height are uncorrelated; 0 for a line through the origin
 * @param height the line's y there; 0 for a line through the origin
 * @param heightUncertainty standard uncertainty of that y; 0 for a line through the origin
 * @param chiSquared sum over the points of (distance from the line over its uncertainty)²; empty if
 *     the points have no uncertainties
 * @param freedom degrees of freedom: points less fitted parameters; 0 where the line passes through
 *     every point whatever they are
 * @param residualDeviation sqrt(sum of (y - line)² / freedom), without weights, in the unit of y; 0
 *     without a degree of freedom
 */
public record Line(
    double slope,
    double slopeUncertainty,
    double centre,
    double height,
    double heightUncertainty,
    OptionalDouble chiSquared,
    int freedom,
    double residualDeviation) {

  /** The line's y at an x. */
  public double at(double x) {
    return height + slope * (x - centre);
  }

  /**
   * The standard uncertainty of {@link #at}, which is JCGM 100:2008, H.3.4 with the covariance of
   * slope and intercept included.
   */
  public double uncertaintyAt(double x) {
    return Math.hypot(heightUncertainty, slopeUncertainty * (x - centre));
  }

  /** The x at which the line has a y; the slope is not 0. */
  public double placeOf(double y) {
    return centre + (y - height) / slope;
  }

  /**
   * The standard uncertainty of {@link #placeOf}, to first order: that of y and that of the line
   * there, over the slope (EURACHEM/CITAC CG 4, E.4).
   *
   * @param uncertainty standard uncertainty of y, independent of the line
   */
  public double placeUncertainty(double y, double uncertainty) {
    return Math.hypot(uncertainty, uncertaintyAt(placeOf(y))) / Math.abs(slope);
  }

  /** The line's y at x = 0. */
  public double intercept() {
    return at(0);
  }

  /** The standard uncertainty of the intercept. */
  public double interceptUncertainty() {
    return uncertaintyAt(0);
  }

  /** The correlation coefficient of slope and intercept; 0 where one of them is exact. */
  public double correlation() {
    double uncertainty = interceptUncertainty();
    return uncertainty == 0 ? 0 : -centre * (slopeUncertainty / uncertainty);
  }
}
