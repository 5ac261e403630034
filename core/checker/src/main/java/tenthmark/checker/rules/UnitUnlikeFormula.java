package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tenthmark.checker.dimension.FormulaUnits;
import tenthmark.checker.dimension.UnitFault;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A value whose formula gives another unit than the one that stands with it. */
@AutoService(Rule.class)
public final class UnitUnlikeFormula implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("unit-unlike-formula", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    FormulaUnits units = inspection.formulaUnits();
    Doubts doubts = new Doubts(inspection);
    List<Finding> findings = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (MeasurementRecord measurement : inspection.records()) {
      for (UnitFault fault : units.faults(measurement)) {
        if (told.add(form(fault.cell(), inspection))) {
          findings.add(finding(fault, measurement, doubts));
        }
      }
    }
    return findings;
  }

  /** Copies of one formula have one fault, which is told once. */
  private static String form(Cell cell, Inspection inspection) {
    return cell.address().sheet() + "!" + inspection.evaluation().relativeForm(cell).orElseThrow();
  }

  /** A number written in the formula may have a unit that nobody states. */
  private static Finding finding(UnitFault fault, MeasurementRecord measurement, Doubts doubts) {
    CellAddress cell = fault.cell().address();
    if (!fault.certain()) {
      return DECLARATION
          .withSeverity(Severity.NOTE)
          .finding(cell, fault.found(), Message.of("unit-unlike-formula.number", fault.expected()));
    }
    Finding finding = DECLARATION.finding(cell, fault.found(), fault.expected());
    return doubts.about(measurement, Field.UNIT).map(finding::inDoubt).orElse(finding);
  }
}
