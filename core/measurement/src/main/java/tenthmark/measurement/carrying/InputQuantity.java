package tenthmark.measurement.carrying;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * An input as a distribution of possible values.
 *
 * @param value the measured value, the middle of the distribution
 * @param uncertainty half-width, or standard uncertainty for a normal distribution; zero if exact
 */
public record InputQuantity(double value, double uncertainty, Distribution distribution) {

  /** Possible values that lie so many standard uncertainties from the measured one. */
  double[] at(double[] deviations) {
    return Arrays.stream(deviations).map(deviation -> value + uncertainty * deviation).toArray();
  }

  /** So many possible values; one alone stands for all if the input is exact. */
  double[] draw(int samples, UniformRandomProvider random) {
    if (uncertainty == 0) {
      return new double[] {value};
    }
    double[] drawn = new double[samples];
    distribution.fill(drawn, value, uncertainty, random);
    return drawn;
  }
}
