package tenthmark.checker.carried;

import tenthmark.measurement.recording.Combine;

/** The ways of carrying uncertainties that the checker accepts. */
public enum Way {
  /** The sum of the contributions: an upper bound. */
  STRAIGHT("straight"),
  /** The root of the sum of their squares (JCGM 100:2008, 5.1.2). */
  QUADRATURE("quadrature"),
  /**
   * Half the range of the results at the ends of the inputs' ranges. Common practice, no source.
   */
  EXTREMES("half the range between the extremes");

  private final String words;

  Way(String words) {
    this.words = words;
  }

  /** The way in words. */
  public String words() {
    return words;
  }

  /** The way that a course's choice for contributions means; extremes are nobody's choice there. */
  public static Way of(Combine combine) {
    return combine == Combine.STRAIGHT ? STRAIGHT : QUADRATURE;
  }
}
