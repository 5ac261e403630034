package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** A record without unit. */
@AutoService(Rule.class)
public final class UnitMissing implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("unit-missing", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean stated = !measurement.unit().isEmpty() || measurement.cell(Field.UNIT).isPresent();
    return stated || inspection.expectations().isPureNumber(measurement)
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNIT),
                Message.of("unit-missing.found", measurement.name()),
                Message.of("unit-missing.expected")));
  }
}
