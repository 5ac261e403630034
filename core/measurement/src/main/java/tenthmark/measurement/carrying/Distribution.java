package tenthmark.measurement.carrying;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** How the possible values of an input lie around the measured one (JCGM 101:2008, 6.4). */
public enum Distribution {
  /** All equally likely within the half-width (6.4.2). */
  RECTANGULAR {
    @Override
    void fill(double[] samples, double value, double halfWidth, UniformRandomProvider random) {
      for (int i = 0; i < samples.length; i++) {
        samples[i] = value + halfWidth * (2 * random.nextDouble() - 1);
      }
    }
  },
  /** Most likely in the middle, falling evenly to none at the half-width (6.4.5). */
  TRIANGULAR {
    @Override
    void fill(double[] samples, double value, double halfWidth, UniformRandomProvider random) {
      for (int i = 0; i < samples.length; i++) {
        double first = random.nextDouble();
        double second = random.nextDouble();
        samples[i] = value + halfWidth * (first - second);
      }
    }
  },
  /** Normal, with the uncertainty as its standard deviation (6.4.7). */
  NORMAL {
    @Override
    void fill(double[] samples, double value, double standard, UniformRandomProvider random) {
      ZigguratSampler.NormalizedGaussian gaussian = ZigguratSampler.NormalizedGaussian.of(random);
      for (int i = 0; i < samples.length; i++) {
        samples[i] = value + standard * gaussian.sample();
      }
    }
  };

  /** Fills an array with samples. */
  abstract void fill(
      double[] samples, double value, double uncertainty, UniformRandomProvider random);
}
