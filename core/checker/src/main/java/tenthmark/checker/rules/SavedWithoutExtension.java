package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.wording.Message;

/** A file that was last saved where LAB functions could not be called. */
@AutoService(Rule.class)
public final class SavedWithoutExtension implements Rule {

  private static final Value UNKNOWN_NAME = new Value.Fault("#NAME?");

  /** What Calc gives for each call where Java is missing, and elsewhere for some bad arguments. */
  private static final Value PARAMETER_ERROR = new Value.Fault("Err:504");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("saved-without-extension", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    List<Cell> marked =
        inspection.formulas().filter(cell -> isMark(cell, inspection.evaluation())).toList();
    return marked.isEmpty()
        ? List.of()
        : List.of(
            DECLARATION.finding(
                marked.get(0).address(),
                Message.of("saved-without-extension.found", marked.size()),
                Message.of("saved-without-extension.expected")));
  }

  /** Whether a workbook was last saved where LAB functions could not be called. */
  static boolean isSo(Inspection inspection) {
    return inspection.formulas().anyMatch(cell -> isMark(cell, inspection.evaluation()));
  }

  private static boolean isMark(Cell cell, Evaluation evaluation) {
    Content.Formula formula = (Content.Formula) cell.content();
    Optional<Value> stored = Evaluation.stored(formula);
    return formula.callsLabInLowerCase()
        || evaluation.dependsOnLab(cell.address())
            && (stored.filter(UNKNOWN_NAME::equals).isPresent()
                || stored.filter(PARAMETER_ERROR::equals).isPresent()
                    && evaluation.number(cell.address()).isPresent()
                    && !evaluation.followsError(cell));
  }
}
