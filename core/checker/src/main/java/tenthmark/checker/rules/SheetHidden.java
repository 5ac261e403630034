package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;

/** A hidden sheet, which is left alone. */
@AutoService(Rule.class)
public final class SheetHidden implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "sheet-hidden",
          Severity.NOTE,
          "A hidden sheet; no rule looks at it.",
          "Nobody who reads the workbook sees it, but other sheets may calculate with it.",
          "Show the sheet if it belongs to the report, and check again.",
          "A sheet named Spare holds an earlier table of the same spokes and is hidden; the report "
              + "stands on the visible sheet.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection.workbook().sheets().stream()
        .filter(Sheet::hidden)
        .filter(sheet -> sheet.cells().findAny().isPresent())
        .map(
            sheet ->
                DECLARATION.finding(
                    new CellAddress(sheet.name(), 0, 0),
                    "the sheet " + sheet.name() + " is hidden and was not checked",
                    "nothing: this is no fault"))
        .toList();
  }
}
