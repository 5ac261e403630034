package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.measurement.wording.Message;

/** Contributions of one sum in several units. */
@AutoService(Rule.class)
public final class UnitsMixed implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("units-mixed", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Set<String> units = RecordUnits.ofSum(measurement);
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
            Message.of(
                "units-mixed.found",
                measurement.name(),
                Message.joined("list.and", units.stream().map(Message::verbatim).toList())),
            own.isEmpty()
                ? Message.of("units-mixed.one")
                : Message.of("units-mixed.expected", own)));
  }
}
