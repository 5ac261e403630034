package tenthmark.measurement.recording;

/**
 * What the maker of a digital instrument states: so many percent of the reading plus so many counts
 * of the last digit.
 *
 * @param resolution one count of the last digit, greater than zero, in the unit of the reading
 * @param percent part of the reading in percent, zero or greater
 * @param counts number of counts of the last digit, zero or greater
 */
public record DisplaySpecification(double resolution, double percent, double counts) {

  /**
   * The instrument uncertainty, {@code |reading| * percent / 100 + counts * resolution}, as a
   * half-width in the unit of the reading. Common practice, no source.
   */
  public double uncertainty(double reading) {
    return Math.abs(reading) * (percent / 100) + counts * resolution;
  }
}
