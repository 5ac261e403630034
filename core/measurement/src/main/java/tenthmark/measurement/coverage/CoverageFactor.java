package tenthmark.measurement.coverage;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * The factor that turns a standard uncertainty into an expanded one: the two-sided quantile of
 * Student's distribution (JCGM 100:2008, G.3.2 and table G.2).
 */
public final class CoverageFactor {

  private static final double PRECISION = 1e-13;

  /** From here on the expansion is exact to the last digits, and the library's solver is not. */
  private static final double NEARLY_NORMAL = 1e5;

  private CoverageFactor() {}

  /**
   * The t for which a fraction {@code level} of Student's distribution lies between -t and t.
   *
   * @param freedom degrees of freedom, any real number from 1 on; infinite for the normal
   *     distribution
   * @param level fraction between 0 and 1, both excluded
   */
  public static double of(double freedom, double level) {
    double lowerTail = (1 - level) / 2;
    return freedom < NEARLY_NORMAL
        ? -new TDistribution(freedom, PRECISION).inverseCumulativeProbability(lowerTail)
        : nearlyNormal(freedom, lowerTail);
  }

  /** Abramowitz and Stegun 26.7.5, first two terms in 1/freedom. */
  private static double nearlyNormal(double freedom, double lowerTail) {
    double z = -new NormalDistribution().inverseCumulativeProbability(lowerTail);
    double first = z * (z * z + 1) / 4;
    double second = z * ((5 * z * z + 16) * z * z + 3) / 96;
    return z + (first + second / freedom) / freedom;
  }
}
