package tenthmark.measurement.curve;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A curve fitted to points.
 *
 * @param estimates its parameters, in the order of the guesses
 * @param chiSquared sum of ((y - curve)/uy)²; empty if the points have no uncertainties
 * @param freedom degrees of freedom: points less parameters, at least 1
 * @param residualDeviation sqrt(sum of (y - curve)² / freedom), without weights, in the unit of y
 */
public record Curve(
    List<Estimate> estimates, OptionalDouble chiSquared, int freedom, double residualDeviation) {

  /** A fitted parameter with its standard uncertainty. */
  public record Estimate(String name, double value, double uncertainty) {}
}
