package tenthmark.checker.evaluation;

import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationSheet;
import tenthmark.checker.workbook.OutOfTimeException;
import tenthmark.checker.workbook.Sheet;

/** A sheet as POI's evaluator sees it. */
final class ModelSheet implements EvaluationSheet {

  private final Sheet sheet;

  ModelSheet(Sheet sheet) {
    this.sheet = sheet;
  }

  @Override
  public EvaluationCell getCell(int row, int column) {
    OutOfTimeException.ifInterrupted();
    return sheet.at(column, row).map(cell -> new ModelCell(this, cell)).orElse(null);
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
