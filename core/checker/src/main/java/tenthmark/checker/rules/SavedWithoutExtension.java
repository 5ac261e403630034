package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.evaluation.StoredResults;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.wording.Message;

/** A file that was last saved where LAB functions could not be called. */
@AutoService(Rule.class)
public final class SavedWithoutExtension implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("saved-without-extension", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    StoredResults stored = new StoredResults(inspection.evaluation());
    List<Cell> marked = inspection.formulas().filter(stored::isWithoutExtension).toList();
    return marked.isEmpty()
        ? List.of()
        : List.of(
            DECLARATION
                .finding(
                    marked.get(0).address(),
                    Message.of("saved-without-extension.found", marked.size()),
                    Message.of("saved-without-extension.expected"))
                .mendedBy(typedAnew(inspection)));
  }

  /** Results that were not stored cannot differ from those that recalculation gives. */
  private static List<Mend> typedAnew(Inspection inspection) {
    return inspection
        .formulas()
        .filter(cell -> inspection.evaluation().dependsOnLab(cell.address()))
        .map(cell -> new Mend(cell.address(), ((Content.Formula) cell.content()).typedAnew()))
        .toList();
  }
}
