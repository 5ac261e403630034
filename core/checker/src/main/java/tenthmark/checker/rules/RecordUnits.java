package tenthmark.checker.rules;

import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.Conversion;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;

/** The units of a record's parts. */
final class RecordUnits {

  private RecordUnits() {}

  /** The unit that a part is written in: its own, else the record's; empty if it is missing. */
  static String text(MeasurementRecord measurement, Field field) {
    String own = measurement.unit(field);
    return own.isEmpty() ? measurement.unit() : own;
  }

  /** Whether two texts are one unit, in whatever spelling. */
  static boolean same(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    Optional<MeasurementUnit> second = UnitReader.STANDARD.read(other).known();
    return UnitReader.STANDARD
        .read(one)
        .known()
        .filter(first -> second.filter(first::isSameAs).isPresent())
        .isPresent();
  }

  /** The unit of a part; empty if it is missing or unknown. */
  static Optional<MeasurementUnit> of(MeasurementRecord measurement, Field field) {
    return UnitReader.STANDARD.read(text(measurement, field)).known();
  }

  /** From the unit of a part to another. */
  static Optional<Conversion> from(
      MeasurementRecord measurement, Field field, UnitText.Known target) {
    return of(measurement, field).flatMap(unit -> unit.to(target.unit()));
  }

  /** From a unit to the one of a part. */
  static Optional<Conversion> to(
      UnitText.Known source, MeasurementRecord measurement, Field field) {
    return of(measurement, field).flatMap(unit -> source.unit().to(unit));
  }
}
