package tenthmark.measurement.recording;

import tenthmark.measurement.rounding.DigitsRule;

/**
 * A named set of choices by which a course writes its measurements down.
 *
 * @param name what the course calls it
 * @param wideFraction part of a division judged between wide marks
 * @param fineFraction part of a division judged between fine marks
 * @param combine how contributions make a total
 * @param digits how many digits of an uncertainty are kept
 * @param reactionSeconds human reaction time in hand timing, in seconds
 * @param coverageFactor by which a course multiplies the uncertainties that it states; 1 for none
 *     (JCGM 100:2008, 6.2.1)
 */
public record Convention(
    String name,
    double wideFraction,
    double fineFraction,
    Combine combine,
    DigitsRule digits,
    double reactionSeconds,
    double coverageFactor) {

  /** The classroom convention and the default of the worksheet functions. */
  public static final Convention BENCH =
      new Convention("bench", 0.1, 0.25, Combine.STRAIGHT, new DigitsRule.Bench(), 0.2, 1);

  /** The convention that follows JCGM 100:2008. */
  public static final Convention STANDARD =
      new Convention("standard", 0.1, 0.25, Combine.QUADRATURE, new DigitsRule.Fixed(2), 0.2, 1);

  /** The part of a division that is judged at this spacing. */
  public double fraction(Spacing spacing) {
    return spacing == Spacing.WIDE ? wideFraction : fineFraction;
  }
}
