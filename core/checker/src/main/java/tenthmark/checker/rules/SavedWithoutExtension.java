package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;

/** A file that was last saved by a program without the extension. */
@AutoService(Rule.class)
public final class SavedWithoutExtension implements Rule {

  private static final Value UNKNOWN_NAME = new Value.Fault("#NAME?");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "saved-without-extension",
          Severity.NOTE,
          "A file that was saved by a program without the extension: it spells the LAB functions in "
              + "lower case or stores #NAME? for their results.",
          "The formulas are whole and were checked, but the stored results are lost or old.",
          "Open the file where the extension is installed, recalculate (Ctrl+Shift+F9) and save.",
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
                "the file was saved by a program without the extension; cells concerned: "
                    + marked.size(),
                "results stored by a program with the extension"));
  }

  /** Whether a workbook was last saved without the extension. */
  static boolean isSo(Inspection inspection) {
    return inspection.formulas().anyMatch(cell -> isMark(cell, inspection.evaluation()));
  }

  private static boolean isMark(Cell cell, Evaluation evaluation) {
    Content.Formula formula = (Content.Formula) cell.content();
    boolean lost =
        evaluation.dependsOnLab(cell.address())
            && Evaluation.stored(formula).filter(UNKNOWN_NAME::equals).isPresent();
    return lost || formula.callsLabInLowerCase();
  }
}
