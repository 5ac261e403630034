package tenthmark.checker.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Names;

/** The profile that a handed-out workbook holds, a line in each cell of a column. */
public final class InsideProfile {

  /** The name of its cells, for the whole workbook. */
  public static final String NAME = "LAB_PROFILE";

  /** As many lines as no profile has. */
  private static final int MOST_LINES = 20_000;

  private InsideProfile() {}

  /** The profile's text, if the workbook holds one. */
  public static Optional<String> of(Workbook workbook, Evaluation evaluation) {
    return cells(evaluation).map(range -> text(workbook, range));
  }

  /** Where the workbook holds it, if it does. */
  static Optional<CellRange> cells(Evaluation evaluation) {
    return new Names(evaluation.cells(), new Formulas()).range(NAME);
  }

  private static String text(Workbook workbook, CellRange range) {
    List<String> lines = new ArrayList<>();
    int bottom = Math.min(range.bottom(), range.top() + MOST_LINES - 1);
    for (int row = range.top(); row <= bottom; row++) {
      lines.add(
          workbook
              .at(new CellAddress(range.sheet(), range.left(), row))
              .map(Cell::content)
              .filter(Content.Text.class::isInstance)
              .map(text -> ((Content.Text) text).text())
              .orElse(""));
    }
    return String.join("\n", lines);
  }
}
