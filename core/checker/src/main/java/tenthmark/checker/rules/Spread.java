package tenthmark.checker.rules;

import java.util.Arrays;

/**
 * What the scatter of several values is called by.
 *
 * @param count how many there are, at least 2
 * @param mean their mean
 * @param deviation the standard deviation of a single one, with one less than their number in the
 *     denominator (JCGM 100:2008, 4.2.2)
 */
record Spread(int count, double mean, double deviation) {

  static Spread of(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double squares = Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
    return new Spread(values.length, mean, Math.sqrt(squares / (values.length - 1)));
  }

  /** The standard deviation of the mean (JCGM 100:2008, 4.2.3). */
  double ofMean() {
    return deviation / Math.sqrt(count);
  }

  /** The standard deviation with the number itself in the denominator. */
  double ofPopulation() {
    return deviation * Math.sqrt((count - 1.0) / count);
  }
}
