package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.unit.Conversion;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.wording.Message;

/** Another unit of the right dimension. */
@AutoService(Rule.class)
public final class UnitOtherThanExpected implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("unit-other-than-expected", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    UnitText.Known wanted = expected.quantity().unit();
    Optional<Conversion> conversion =
        RecordUnits.from(measurement, Field.VALUE, wanted).filter(between -> !between.isIdentity());
    Optional<Double> value = measurement.number(Field.VALUE);
    Optional<Double> converted =
        conversion.flatMap(between -> value.map(between::value)).filter(Double::isFinite);
    return converted.isEmpty()
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNIT),
                Message.of(
                    "found.is", measurement.name(), Numbers.show(value.get(), measurement.unit())),
                Message.of(
                    "unit-other-than-expected.expected",
                    wanted.text(),
                    Numbers.show(converted.get(), wanted.text()))));
  }
}
