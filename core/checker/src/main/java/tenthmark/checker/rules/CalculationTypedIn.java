package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.course.Origin;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.wording.Message;

/** A typed-in value of a quantity that has to be calculated. */
@AutoService(Rule.class)
public final class CalculationTypedIn implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("calculation-typed-in", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    return measurement
        .cell(Field.VALUE)
        .filter(cell -> expected.quantity().origin() == Origin.CALCULATED)
        .filter(cell -> !refersToCells(cell, measurement, inspection))
        .map(
            cell ->
                DECLARATION.finding(
                    cell.address(),
                    Message.of(
                        measurement.isFormula(Field.VALUE)
                            ? "calculation-typed-in.found.formula"
                            : "calculation-typed-in.found.number",
                        measurement.name()),
                    Message.of("calculation-typed-in.expected")));
  }

  /** A formula that cannot be followed gets the benefit of the doubt. */
  private static boolean refersToCells(
      Cell cell, MeasurementRecord measurement, Inspection inspection) {
    return measurement.isFormula(Field.VALUE)
        && (!inspection.evaluation().references(cell).isEmpty()
            || inspection.evaluation().at(cell.address()) instanceof Outcome.NotCheckable);
  }
}
