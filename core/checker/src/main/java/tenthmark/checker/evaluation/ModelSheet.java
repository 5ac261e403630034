package tenthmark.checker.evaluation;

import java.util.function.Predicate;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationSheet;
import tenthmark.checker.workbook.OutOfTimeException;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;

/** A sheet as POI's evaluator sees it. */
final class ModelSheet implements EvaluationSheet {

  private final Sheet sheet;
  private final Predicate<CellAddress> inArrays;

  /**
   * A sheet.
   *
   * @param inArrays whether the formula of a cell calculates with whole ranges
   */
  ModelSheet(Sheet sheet, Predicate<CellAddress> inArrays) {
    this.sheet = sheet;
    this.inArrays = inArrays;
  }

  @Override
  public EvaluationCell getCell(int row, int column) {
    OutOfTimeException.ifInterrupted();
    return sheet.at(column, row).map(cell -> new ModelCell(this, cell)).orElse(null);
  }

  boolean calculatesInArrays(CellAddress cell) {
    return inArrays.test(cell);
  }

  @Override
  public int getLastRowNum() {
    return sheet.lastRow();
  }

  @Override
  public boolean isRowHidden(int row) {
    return false;
  }

  @Override
  public void clearAllCachedResultValues() {
    // The sheet keeps no results.
  }
}
