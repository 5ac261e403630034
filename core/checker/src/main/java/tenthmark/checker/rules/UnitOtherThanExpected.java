package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.Conversion;
import tenthmark.checker.unit.UnitText;

/** Another unit of the right dimension. */
@AutoService(Rule.class)
public final class UnitOtherThanExpected implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "unit-other-than-expected",
          Severity.NOTE,
          "A unit that is not the one in which the course expects the quantity, but converts to it.",
          "Results of a class are easier to compare in one unit; nothing is wrong with another.",
          "Convert the value and the uncertainty if the course asks for its own unit.",
          "Crank arm 17.25 cm where the course expects mm; 172.5 mm is the same.");

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
    return conversion.isEmpty() || value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNIT),
                measurement.name() + " is " + Numbers.show(value.get(), measurement.unit()),
                "the same in "
                    + wanted.text()
                    + ": "
                    + Numbers.show(conversion.get().value(value.get()), wanted.text())));
  }
}
