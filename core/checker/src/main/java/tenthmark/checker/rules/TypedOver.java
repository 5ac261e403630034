package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordTable;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;

/** A typed-in number or text where the cells around it have formulas. */
@AutoService(Rule.class)
public final class TypedOver implements Rule {

  private static final List<Field> COMPUTED = List.of(Field.UNCERTAINTY, Field.RESULT);

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "typed-over",
          Severity.WARNING,
          "A typed-in number or text where the same column of other records, or both neighbours, "
              + "have the same formula.",
          "A typed-in result stays as it is when the measurement is corrected.",
          "Copy the formula from a neighbouring cell.",
          "The totals of six records are =LAB_TOTAL(...) and that of the seventh is a "
              + "typed-in 0.45; copied from the row above, the formula computes it.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    List<Finding> findings = new ArrayList<>();
    Set<CellAddress> inTables = new HashSet<>();
    for (RecordTable table : inspection.tables()) {
      COMPUTED.forEach(field -> findings.addAll(inColumn(table, field)));
      table.records().forEach(measurement -> measurement.places().forEach(inTables::add));
    }
    inspection
        .sheets()
        .flatMap(sheet -> sheet.cells().filter(cell -> isHole(sheet, cell, inspection)))
        .filter(cell -> !inTables.contains(cell.address()))
        .forEach(cell -> findings.add(finding(cell, "the formula of the cells on both sides")));
    return findings;
  }

  /** At least two other records must have a formula there, and most of them. */
  private static List<Finding> inColumn(RecordTable table, Field field) {
    List<MeasurementRecord> filled =
        table.records().stream().filter(record -> record.cell(field).isPresent()).toList();
    List<MeasurementRecord> typed = filled.stream().filter(r -> !r.isFormula(field)).toList();
    int formulas = filled.size() - typed.size();
    if (formulas < 2 || formulas <= typed.size()) {
      return List.of();
    }
    return typed.stream()
        .flatMap(record -> record.cell(field).stream())
        .map(
            cell ->
                finding(
                    cell,
                    "a formula, as in the " + field.word() + " of " + formulas + " other records"))
        .toList();
  }

  private static boolean isHole(Sheet sheet, Cell cell, Inspection inspection) {
    if (!(cell.content() instanceof Content.Number)) {
      return false;
    }
    int column = cell.address().column();
    int row = cell.address().row();
    return sameForm(sheet.at(column, row - 1), sheet.at(column, row + 1), inspection)
        || sameForm(sheet.at(column - 1, row), sheet.at(column + 1, row), inspection);
  }

  private static boolean sameForm(Optional<Cell> one, Optional<Cell> other, Inspection inspection) {
    Optional<String> form = one.flatMap(inspection.evaluation()::relativeForm);
    return form.isPresent() && form.equals(other.flatMap(inspection.evaluation()::relativeForm));
  }

  private static Finding finding(Cell cell, String expected) {
    String content =
        cell.content() instanceof Content.Number number
            ? "the typed-in number " + Numbers.show(number.value())
            : "a typed-in text";
    return DECLARATION.finding(cell.address(), content, expected);
  }
}
