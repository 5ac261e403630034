package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;

/** A unit that the checker cannot read. */
@AutoService(Rule.class)
public final class UnitUnknown implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "unit-unknown",
          Severity.NOTE,
          "A unit of an expected quantity that the checker does not know, with the reason.",
          "The record cannot be converted, so it is not compared with what the course expects.",
          "Write the unit with its symbols, such as kg·m² or J/(kg·K), or look at it yourself.",
          "Heat capacity in J/kg·K, which can be read in two ways; J/(kg·K) cannot.");

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
                "the unit of " + measurement.name() + " is not known: " + unknown.reason(),
                expected.quantity().unit().text() + " or a unit that converts to it"))
        : Optional.empty();
  }
}
