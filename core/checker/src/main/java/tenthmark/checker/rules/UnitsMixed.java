package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** Contributions of one sum in several units. */
@AutoService(Rule.class)
public final class UnitsMixed implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "units-mixed",
          Severity.ERROR,
          "Contributions to one total that are written in different units.",
          "Sizes in different units cannot be added.",
          "Write the value and every contribution of a record in one unit.",
          "A value in cm, the reading in mm and the physical contribution in cm; all "
              + "three in mm is right.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Set<String> units = units(measurement);
    if (units.size() <= 1) {
      return Optional.empty();
    }
    String own = measurement.unit();
    Field other =
        Field.CONTRIBUTIONS.stream()
            .filter(field -> !measurement.unit(field).isEmpty())
            .filter(field -> !RecordUnits.same(measurement.unit(field), own))
            .findFirst()
            .orElse(Field.UNCERTAINTY);
    return Optional.of(
        DECLARATION.finding(
            measurement.placeOrValue(other),
            "the record " + measurement.name() + " mixes the units " + String.join(" and ", units),
            own.isEmpty() ? "one unit" : "every contribution in " + own));
  }

  /**
   * The units that the value and the contributions with a size of their own are written in; of
   * several spellings of one unit the first.
   */
  static Set<String> units(MeasurementRecord measurement) {
    Set<String> units = new TreeSet<>();
    Stream.concat(
            Stream.of(measurement.unit()),
            Field.CONTRIBUTIONS.stream()
                .filter(field -> measurement.number(field).filter(size -> size != 0).isPresent())
                .map(measurement::unit))
        .filter(unit -> !unit.isEmpty())
        .filter(unit -> units.stream().noneMatch(other -> RecordUnits.same(unit, other)))
        .forEach(units::add);
    return units;
  }
}
