package tenthmark.checker.record;

import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;

/** Lengths between two ends, each of which is read. */
public final class Length {

  private static final MeasurementUnit METRE = UnitReader.STANDARD.read("m").known().orElseThrow();

  private Length() {}

  /**
   * Whether a record is of a length between two ends: the reading of one position is not, nor what
   * an instrument shows that is read once against its own zero.
   */
  public static boolean isBetweenEnds(MeasurementRecord measurement) {
    return RecordUnits.of(measurement, Field.VALUE).flatMap(unit -> unit.to(METRE)).isPresent()
        && !mentions(Notion.ONE_POSITION, measurement)
        && !mentions(Notion.OWN_ZERO, measurement);
  }

  private static boolean mentions(Notion notion, MeasurementRecord measurement) {
    return Vocabulary.STANDARD.mentions(notion, measurement.wording());
  }
}
