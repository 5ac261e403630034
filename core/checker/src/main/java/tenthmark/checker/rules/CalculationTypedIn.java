package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.course.Origin;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;

/** A typed-in value of a quantity that has to be calculated. */
@AutoService(Rule.class)
public final class CalculationTypedIn implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "calculation-typed-in",
          Severity.ERROR,
          "A value that the course expects to be calculated and that refers to no other cell.",
          "Nobody can follow it back to what was measured, and it does not change with it.",
          "Write a formula that refers to the cells of the measured values.",
          "Spring constant 625, or =12.5/0.02, in the cell; =C2/C3 follows the force and "
              + "the extension.");

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
                    measurement.name()
                        + (measurement.isFormula(Field.VALUE)
                            ? " is calculated from typed-in numbers alone"
                            : " is typed in"),
                    "a formula that refers to the measured values"));
  }

  /** A formula that cannot be followed gets the benefit of the doubt. */
  private static boolean refersToCells(
      Cell cell, MeasurementRecord measurement, Inspection inspection) {
    return measurement.isFormula(Field.VALUE)
        && (!inspection.evaluation().precedents(cell).isEmpty()
            || inspection.evaluation().at(cell.address()) instanceof Outcome.NotCheckable);
  }
}
