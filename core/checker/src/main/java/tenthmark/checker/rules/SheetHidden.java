package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A hidden sheet, which is left alone. */
@AutoService(Rule.class)
public final class SheetHidden implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("sheet-hidden", Severity.NOTE);

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
                    Message.of("sheet-hidden.found", sheet.name()),
                    Message.of("no-fault")))
        .toList();
  }
}
