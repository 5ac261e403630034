package tenthmark.checker.evaluation;

import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/** A cell as POI's evaluator sees it. */
record ModelCell(ModelSheet sheet, Cell cell) implements EvaluationCell {

  CellAddress address() {
    return cell.address();
  }

  Content content() {
    return cell.content();
  }

  @Override
  public Object getIdentityKey() {
    return address();
  }

  @Override
  public EvaluationSheet getSheet() {
    return sheet;
  }

  @Override
  public int getRowIndex() {
    return address().row();
  }

  @Override
  public int getColumnIndex() {
    return address().column();
  }

  @Override
  public CellType getCellType() {
    if (content() instanceof Content.Number) {
      return CellType.NUMERIC;
    }
    if (content() instanceof Content.Text) {
      return CellType.STRING;
    }
    if (content() instanceof Content.Logical) {
      return CellType.BOOLEAN;
    }
    return content() instanceof Content.Error ? CellType.ERROR : CellType.FORMULA;
  }

  @Override
  public double getNumericCellValue() {
    return ((Content.Number) content()).value();
  }

  @Override
  public String getStringCellValue() {
    String text = ((Content.Text) content()).text();
    if (text.length() > BoundedText.MOST) {
      throw NotCheckableException.of("reason.long.cell", address().place(), BoundedText.MOST);
    }
    return text;
  }

  @Override
  public boolean getBooleanCellValue() {
    return ((Content.Logical) content()).value();
  }

  @Override
  public int getErrorCellValue() {
    String name = ((Content.Error) content()).name();
    for (FormulaError error : FormulaError.values()) {
      if (error.getString().equals(name)) {
        return error.getCode();
      }
    }
    return FormulaError.VALUE.getCode();
  }

  @Override
  public CellRangeAddress getArrayFormulaRange() {
    return ((Content.Formula) content())
        .array()
        .map(area -> new CellRangeAddress(area.top(), area.bottom(), area.left(), area.right()))
        .orElseGet(
            () ->
                new CellRangeAddress(
                    getRowIndex(), getRowIndex(), getColumnIndex(), getColumnIndex()));
  }

  @Override
  public boolean isPartOfArrayFormulaGroup() {
    return content() instanceof Content.Formula formula
        && (formula.array().isPresent() || sheet.calculatesInArrays(address()));
  }

  @Override
  public CellType getCachedFormulaResultType() {
    return CellType.ERROR;
  }
}
