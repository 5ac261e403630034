package tenthmark.measurement.repeats;

import tenthmark.measurement.coverage.CoverageFactor;

/** A rule that says from which score on a value is suspect. */
public enum StrayTest {

  /**
   * Grubbs' test at a level of significance: with n values the limit is (n-1)/sqrt(n)
   * sqrt(t²/(n-2+t²)), where t is the quantile of Student's distribution with n-2 degrees of
   * freedom that leaves level/(2n) above it, for one side level/n (F. E. Grubbs, Technometrics 11
   * (1969) 1; ASTM E178).
   */
  GRUBBS(0.05) {
    @Override
    public double limit(int count, double level, Side side) {
      double t = CoverageFactor.of(count - 2, 1 - 2 * level / (side.count() * count));
      return (count - 1) / Math.sqrt(count) * Math.sqrt(t * t / (count - 2 + t * t));
    }
  },

  /**
   * Chauvenet's criterion: a value is suspect if, in a normal distribution, fewer than so many
   * values out of n, usually half a one, are expected to lie so far out (W. Chauvenet, A Manual of
   * Spherical and Practical Astronomy (1863), appendix).
   */
  CHAUVENET(0.5) {
    @Override
    public double limit(int count, double level, Side side) {
      return CoverageFactor.of(Double.POSITIVE_INFINITY, 1 - 2 * level / (side.count() * count));
    }
  };

  private final double usual;

  StrayTest(double usual) {
    this.usual = usual;
  }

  /** The level that is usual: of significance, or the number of values expected so far out. */
  public double usualLevel() {
    return usual;
  }

  /**
   * The highest score that is not suspect.
   *
   * @param count number of values, at least 3
   * @param level greater than 0 and less than 1
   */
  public abstract double limit(int count, double level, Side side);
}
