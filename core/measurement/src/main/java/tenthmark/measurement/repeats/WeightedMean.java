package tenthmark.measurement.repeats;

import java.util.stream.IntStream;

/**
 * The mean of values that each carry their own uncertainty, with weights w = 1/u².
 *
 * @param mean sum of w times value over sum of w, in the unit of the values
 * @param uncertainty 1/sqrt(sum of w): from the given uncertainties alone, whatever the scatter
 * @param chiSquared sum of ((value - mean)/u)²
 * @param freedom degrees of freedom, one less than the number of values
 */
public record WeightedMean(double mean, double uncertainty, double chiSquared, int freedom) {

  /**
   * Computes the mean of at least two values.
   *
   * @param uncertainties one per value, greater than zero
   */
  public static WeightedMean of(double[] values, double[] uncertainties) {
    int best =
        IntStream.range(0, values.length)
            .reduce(0, (i, j) -> uncertainties[j] < uncertainties[i] ? j : i);
    double origin = values[best];
    double unit = uncertainties[best];
    double weights = 0;
    double moment = 0;
    for (int i = 0; i < values.length; i++) {
      double weight = squared(unit / uncertainties[i]);
      weights += weight;
      moment += weight * (values[i] - origin);
    }
    double shift = moment / weights;
    double chiSquared = 0;
    for (int i = 0; i < values.length; i++) {
      chiSquared += squared((values[i] - origin - shift) / uncertainties[i]);
    }
    return new WeightedMean(
        origin + shift, unit / Math.sqrt(weights), chiSquared, values.length - 1);
  }

  /**
   * sqrt(chi-squared over degrees of freedom): about 1 if the values scatter as their uncertainties
   * say, well above 1 if they scatter more.
   */
  public double scatterRatio() {
    return Math.sqrt(chiSquared / freedom);
  }

  private static double squared(double number) {
    return number * number;
  }
}
