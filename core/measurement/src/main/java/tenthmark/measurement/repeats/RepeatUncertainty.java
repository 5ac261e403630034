package tenthmark.measurement.repeats;

import tenthmark.measurement.coverage.CoverageFactor;

/** How the scatter of repeated readings becomes an uncertainty of their mean. */
public enum RepeatUncertainty {
  /** The standard deviation of the mean, s/sqrt(n) (JCGM 100:2008, 4.2.3). */
  SDOM {
    @Override
    public double of(Repeats repeats) {
      return repeats.standardDeviationOfMean();
    }
  },
  /** Half the range of the readings. Common practice, no source. */
  HALFRANGE {
    @Override
    public double of(Repeats repeats) {
      return repeats.halfRange();
    }
  },
  /** The half-width of the 95 % interval, t(n - 1) s/sqrt(n) (JCGM 100:2008, G.3.2). */
  T95 {
    @Override
    public double of(Repeats repeats) {
      return CoverageFactor.of(repeats.count() - 1, 0.95) * repeats.standardDeviationOfMean();
    }
  };

  /** The uncertainty of the mean, in the unit of the readings. */
  public abstract double of(Repeats repeats);
}
