package tenthmark.measurement.repeats;

import java.util.Arrays;

/**
 * How far each value of a series lies from the series' mean: its score is |value - mean| in
 * standard deviations of the series, zero if all values are equal.
 */
public final class Strays {

  private Strays() {}

  /** The scores of at least three values, in their order. */
  public static double[] scores(double[] values) {
    double[] deviations = less(values, values[0]);
    deviations = less(deviations, Arrays.stream(deviations).average().orElseThrow());
    double largest = Arrays.stream(deviations).map(Math::abs).max().orElseThrow();
    if (largest == 0) {
      return deviations;
    }
    double[] shares = Arrays.stream(deviations).map(deviation -> deviation / largest).toArray();
    double variance = Arrays.stream(shares).map(share -> share * share).sum() / (values.length - 1);
    return Arrays.stream(shares).map(share -> Math.abs(share) / Math.sqrt(variance)).toArray();
  }

  private static double[] less(double[] values, double shift) {
    return Arrays.stream(values).map(value -> value - shift).toArray();
  }
}
