package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** A record without unit. */
@AutoService(Rule.class)
public final class UnitMissing implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "unit-missing",
          Severity.ERROR,
          "A measured value without a unit, in its own cell, in the heading or beside the number.",
          "A number without a unit says nothing about the quantity.",
          "Write the unit; for a quantity without dimension write 1.",
          "Crank arm 172.5 with an uncertainty of 0.5; mm belongs in the unit column, or "
              + "in the heading as Value (mm).");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean stated = !measurement.unit().isEmpty() || measurement.cell(Field.UNIT).isPresent();
    return stated
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNIT),
                "the record " + measurement.name() + " has no unit",
                "a unit such as mm, or 1 for a quantity without dimension"));
  }
}
