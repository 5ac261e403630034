package tenthmark.measurement.carrying;

/** How the contributions of several inputs make the uncertainty of a result. */
public sealed interface Combination permits Straight, Quadrature, Correlations {

  /** The total of contributions that have their signs, zero or greater. */
  double total(double[] contributions);

  /**
   * The part of the total, greater than zero, that each contribution makes up. The shares add up to
   * 1; with correlations one may be negative.
   */
  double[] shares(double[] contributions);
}
