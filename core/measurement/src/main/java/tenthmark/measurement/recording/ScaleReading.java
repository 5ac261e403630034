package tenthmark.measurement.recording;

/**
 * A position read by eye off a scale with marks.
 *
 * @param division smallest step marked on the scale, greater than zero, in the unit of the reading
 * @param fraction part of a division that the eye can judge, greater than 0 and at most 1
 * @param ends number of positions read: 2 for a length with a zero end and a far end
 */
public record ScaleReading(double division, double fraction, int ends) {

  /**
   * The reading uncertainty, {@code division * fraction * ends}, as a half-width in the unit of the
   * division: each end read adds its own. Common practice, no source.
   */
  public double uncertainty() {
    return division * fraction * ends;
  }
}
