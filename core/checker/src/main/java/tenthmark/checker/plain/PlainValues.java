package tenthmark.checker.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.DefinedName;
import tenthmark.checker.workbook.FormulaText;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Value;

/**
 * The values that take the place of LAB functions.
 *
 * @param changes cell by cell
 * @param notes what a reader must know, one line each
 */
record PlainValues(List<CellChange> changes, List<String> notes) {

  private static final Value UNKNOWN = new Value.Fault("#N/A");

  /** Recalculates a workbook. */
  static PlainValues of(Workbook workbook, Catalogue catalogue) {
    Evaluation evaluation = Evaluation.of(workbook, catalogue);
    PlainValues values = new PlainValues(new ArrayList<>(), new ArrayList<>());
    workbook.sheets().stream()
        .flatMap(Sheet::cells)
        .filter(cell -> cell.content() instanceof Content.Formula)
        .forEach(cell -> values.add(cell, (Content.Formula) cell.content(), evaluation));
    workbook.names().stream()
        .filter(name -> callsLab(name.formula()))
        .map(DefinedName::name)
        .forEach(name -> values.notes.add("the name " + name + " keeps its LAB function"));
    return values;
  }

  /** What changes where formulas stay and show what they give now. */
  static List<CellChange> refreshed(Workbook workbook, Catalogue catalogue) {
    Evaluation evaluation = Evaluation.of(workbook, catalogue);
    List<CellChange> changes = new ArrayList<>();
    workbook.sheets().stream()
        .flatMap(Sheet::cells)
        .filter(
            cell -> cell.content() instanceof Content.Formula formula && formula.array().isEmpty())
        .filter(cell -> evaluation.dependsOnLab(cell.address()))
        .forEach(
            cell -> {
              if (evaluation.at(cell.address()) instanceof Outcome.Known known) {
                changes.add(new CellChange(cell.address(), known.value(), true));
              }
            });
    return changes;
  }

  /** Cells with a formula of a LAB function, which become values. */
  long replaced() {
    return changes.stream().filter(change -> !change.keepsFormula()).count();
  }

  private void add(Cell cell, Content.Formula formula, Evaluation evaluation) {
    Outcome outcome = evaluation.at(cell.address());
    if (callsLab(formula.text())) {
      changes.add(new CellChange(cell.address(), value(cell, outcome), false));
    } else if (evaluation.dependsOnLab(cell.address())
        && outcome instanceof Outcome.Known known
        && formula.array().isEmpty()) {
      changes.add(new CellChange(cell.address(), known.value(), true));
    }
  }

  private Value value(Cell cell, Outcome outcome) {
    if (outcome instanceof Outcome.Known known) {
      return known.value();
    }
    String reason = CheckerTexts.english().say(((Outcome.NotCheckable) outcome).reason());
    var stored = Evaluation.stored(cell.content());
    notes.add(
        cell.address()
            + ": cannot be calculated here ("
            + reason
            + "); "
            + (stored.isPresent() ? "the value that the file stores was taken" : "it became #N/A"));
    return stored.orElse(UNKNOWN);
  }

  private static boolean callsLab(String formula) {
    return FormulaText.calls(formula).stream()
        .anyMatch(name -> name.toUpperCase(Locale.ROOT).startsWith(Declaration.DISPLAY_PREFIX));
  }
}
