package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;

/** A file that was last saved where LAB functions could not be called. */
@AutoService(Rule.class)
public final class SavedWithoutExtension implements Rule {

  private static final Value UNKNOWN_NAME = new Value.Fault("#NAME?");

  /** What Calc gives for each call where Java is missing, and elsewhere for some bad arguments. */
  private static final Value PARAMETER_ERROR = new Value.Fault("Err:504");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "saved-without-extension",
          Severity.NOTE,
          "A file that was saved where the LAB functions could not be called, for lack of the "
              + "extension or of Java: it spells them in lower case, or stores #NAME? or Err:504 "
              + "for results that can be calculated.",
          "The formulas are whole and were checked, but the stored results are lost or old.",
          "Open the file where the extension and Java are installed, recalculate (Ctrl+Shift+F9) and "
              + "save.",
          "A formula reads =tenthmark.lab.total(G4:H4) and its cell shows #NAME?; opened "
              + "and saved with the extension it shows 0.45.");

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
                "the file was saved by a program without the extension or without Java; cells"
                    + " concerned: "
                    + marked.size(),
                "results stored by a program that has both"));
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
                    && hasNumber(cell, evaluation)
                    && !evaluation.followsError(cell));
  }

  private static boolean hasNumber(Cell cell, Evaluation evaluation) {
    return evaluation.at(cell.address()) instanceof Outcome.Known known
        && known.value() instanceof Value.Numeric;
  }
}
