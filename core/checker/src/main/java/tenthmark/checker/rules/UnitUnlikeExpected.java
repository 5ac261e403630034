package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitText;

/** A unit of another dimension than the quantity's. */
@AutoService(Rule.class)
public final class UnitUnlikeExpected implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "unit-unlike-expected",
          Severity.ERROR,
          "A unit that does not convert to the unit in which the course expects the quantity.",
          "A length in kilograms is no length: the unit, the formula or the quantity is wrong.",
          "Check the dimensions of the formula, then write the unit that they give.",
          "Spring constant 625 N·m where the course expects N/m: force times extension "
              + "instead of force over extension.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    UnitText.Known wanted = expected.quantity().unit();
    Optional<MeasurementUnit> unit = RecordUnits.of(measurement, Field.VALUE);
    return unit.filter(written -> written.to(wanted.unit()).isEmpty())
        .map(
            written ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.UNIT),
                    "the unit of " + measurement.name() + " is " + measurement.unit(),
                    wanted.text() + " or a unit that converts to it"));
  }
}
