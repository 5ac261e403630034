package tenthmark.checker.carried;

import java.util.Locale;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/** The ways of carrying uncertainties that the checker accepts. */
public enum Way {
  /** The sum of the contributions: an upper bound. */
  STRAIGHT,
  /** The root of the sum of their squares (JCGM 100:2008, 5.1.2). */
  QUADRATURE,
  /**
   * Half the range of the results at the ends of the inputs' ranges. Common practice, no source.
   */
  EXTREMES;

  /** The way in words. */
  public Message inWords() {
    return Message.of("way." + name().toLowerCase(Locale.ROOT));
  }

  /** The way that a course's choice for contributions means; extremes are nobody's choice there. */
  public static Way of(Combine combine) {
    return combine == Combine.STRAIGHT ? STRAIGHT : QUADRATURE;
  }
}
