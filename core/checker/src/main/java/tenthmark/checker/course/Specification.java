package tenthmark.checker.course;

import tenthmark.measurement.recording.DisplaySpecification;

/** What the maker of an instrument states about how far its readings may be off. */
public sealed interface Specification {

  /** The instrument uncertainty of a reading, as a half-width in the unit of the reading. */
  double uncertainty(double reading);

  /**
   * The same for every reading.
   *
   * @param size zero or greater
   */
  record HalfWidth(double size) implements Specification {
    @Override
    public double uncertainty(double reading) {
      return size;
    }
  }

  /** Percent of the reading and counts of the last digit. */
  record OfDisplay(DisplaySpecification display) implements Specification {
    @Override
    public double uncertainty(double reading) {
      return display.uncertainty(reading);
    }
  }
}
