package tenthmark.checker.record;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import tenthmark.checker.unit.Conversion;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;

/** The units of a record's parts. */
public final class RecordUnits {

  private RecordUnits() {}

  /** The unit that a part is written in: its own, else the record's; empty if it is missing. */
  public static String text(MeasurementRecord measurement, Field field) {
    String own = measurement.unit(field);
    return own.isEmpty() ? measurement.unit() : own;
  }

  /** Whether two texts are one unit, in whatever spelling. */
  public static boolean same(String one, String other) {
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
  public static Optional<MeasurementUnit> of(MeasurementRecord measurement, Field field) {
    return UnitReader.STANDARD.read(text(measurement, field)).known();
  }

  /** From the unit of a part to another. */
  public static Optional<Conversion> from(
      MeasurementRecord measurement, Field field, UnitText.Known target) {
    return of(measurement, field).flatMap(unit -> unit.to(target.unit()));
  }

  /** From a unit to the one of a part. */
  public static Optional<Conversion> to(
      UnitText.Known source, MeasurementRecord measurement, Field field) {
    return of(measurement, field).flatMap(unit -> source.unit().to(unit));
  }

  /**
   * The units that the value and the contributions with a size of their own are written in; of
   * several spellings of one unit the first.
   */
  public static Set<String> ofSum(MeasurementRecord measurement) {
    Set<String> units = new TreeSet<>();
    Stream.concat(
            Stream.of(measurement.unit()),
            Field.CONTRIBUTIONS.stream()
                .filter(field -> measurement.number(field).filter(size -> size != 0).isPresent())
                .map(measurement::unit))
        .filter(unit -> !unit.isEmpty())
        .filter(unit -> units.stream().noneMatch(other -> same(unit, other)))
        .forEach(units::add);
    return units;
  }
}
