package tenthmark.measurement.repeats;

import tenthmark.measurement.coverage.CoverageFactor;

/** A rule that says from which score on a value is suspect. */
public enum StrayTest {

  /**
   * Grubbs' two-sided test at 5 %: with n values the limit is (n-1)/sqrt(n) sqrt(t²/(n-2+t²)),
   * where t is the quantile of Student's distribution with n-2 degrees of freedom that leaves
   * 0.05/(2n) above it (F. E. Grubbs, Technometrics 11 (1969) 1; ASTM E178).
   */
  GRUBBS {
    @Override
    public double limit(int count) {
      double t = CoverageFactor.of(count - 2, 1 - 0.05 / count);
      return (count - 1) / Math.sqrt(count) * Math.sqrt(t * t / (count - 2 + t * t));
    }
  },

  /**
   * Chauvenet's criterion: a value is suspect if, in a normal distribution, fewer than half a value
   * out of n is expected to lie so far out (W. Chauvenet, A Manual of Spherical and Practical
   * Astronomy (1863), appendix).
   */
  CHAUVENET {
    @Override
    public double limit(int count) {
      return CoverageFactor.of(Double.POSITIVE_INFINITY, 1 - 0.5 / count);
    }
  };

  /** The highest score that is not suspect among so many values, at least 3. */
  public abstract double limit(int count);
}
