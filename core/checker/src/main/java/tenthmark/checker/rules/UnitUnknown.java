package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.wording.Message;

/** A unit that the checker cannot read. */
@AutoService(Rule.class)
public final class UnitUnknown implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("unit-unknown", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    return !measurement.unit().isEmpty()
            && UnitReader.STANDARD.read(measurement.unit()) instanceof UnitText.Unknown unknown
        ? Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNIT),
                Message.of("unit-unknown.found", measurement.name(), unknown.reason()),
                Message.of("expected.unit", expected.quantity().unit().text())))
        : Optional.empty();
  }
}
