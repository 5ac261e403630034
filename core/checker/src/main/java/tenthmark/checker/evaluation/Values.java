package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.formula.CacheAreaEval;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.AreaEval;
import org.apache.poi.ss.formula.eval.BlankEval;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.MissingArgEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.RefEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.FormulaError;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;

/** Turns the evaluator's values into the catalogue's and back. */
final class Values {

  private Values() {}

  /** The value that a program stored with a formula, or that a cell holds; a formula has none. */
  static Value stored(Content content) {
    if (content instanceof Content.Number number) {
      return Value.of(number.value());
    }
    if (content instanceof Content.Text text) {
      return Value.of(text.text());
    }
    if (content instanceof Content.Logical logical) {
      return Value.of(logical.value() ? 1 : 0);
    }
    return content instanceof Content.Error error ? new Value.Fault(error.name()) : Value.BLANK;
  }

  /**
   * An argument as values; a range is cut where its sheet ends. A blank cell that stands alone is
   * zero, as Calc hands it over.
   */
  static Value argument(ValueEval eval, OperationEvaluationContext context) {
    if (eval instanceof RefEval reference) {
      ValueEval cell = reference.getInnerValueEval(reference.getFirstSheetIndex());
      return cell instanceof BlankEval ? Value.of(0) : single(cell);
    }
    return eval instanceof AreaEval area ? table(area, context) : single(eval);
  }

  /** An argument as the cells themselves, where it is a reference to cells. */
  static Value reference(ValueEval eval, OperationEvaluationContext context, Cells cells) {
    if (eval instanceof RefEval ref) {
      int row = ref.getRow();
      int column = ref.getColumn();
      String sheet = context.getWorkbook().getSheetName(ref.getFirstSheetIndex());
      return block(new CellRange(sheet, column, row, column, row), cells);
    }
    if (eval instanceof AreaEval area && !(area instanceof CacheAreaEval)) {
      String sheet = context.getWorkbook().getSheetName(area.getFirstSheetIndex());
      CellRange range =
          new CellRange(
              sheet,
              area.getFirstColumn(),
              area.getFirstRow(),
              area.getLastColumn(),
              area.getLastRow());
      return block(range, cells);
    }
    return argument(eval, context);
  }

  private static Value block(CellRange range, Cells cells) {
    return new Value.Reference(new CellBlock(range, cells));
  }

  /** What a formula gave. */
  static Value single(ValueEval eval) {
    if (eval instanceof NumberEval number) {
      return Double.isFinite(number.getNumberValue())
          ? Value.of(number.getNumberValue())
          : new Value.Fault(FormulaError.NUM.getString());
    }
    if (eval instanceof StringEval text) {
      if (text.getStringValue().length() > BoundedText.MOST) {
        throw NotCheckableException.of("reason.long.text", BoundedText.MOST);
      }
      return Value.of(text.getStringValue());
    }
    if (eval instanceof BoolEval logical) {
      return Value.of(logical.getNumberValue());
    }
    if (eval instanceof BlankEval || eval instanceof MissingArgEval) {
      return Value.BLANK;
    }
    if (eval instanceof ErrorEval error) {
      return new Value.Fault(error.getErrorString());
    }
    throw NotCheckableException.of("reason.kind");
  }

  private static Value table(AreaEval area, OperationEvaluationContext context) {
    int height = area.getHeight();
    if (!(area instanceof CacheAreaEval)) {
      int lastRow = context.getWorkbook().getSheet(area.getFirstSheetIndex()).getLastRowNum();
      height = Math.max(1, Math.min(height, lastRow - area.getFirstRow() + 1));
    }
    List<List<Value>> rows = new ArrayList<>();
    for (int row = 0; row < height; row++) {
      List<Value> cells = new ArrayList<>();
      for (int column = 0; column < area.getWidth(); column++) {
        cells.add(single(area.getRelativeValue(row, column)));
      }
      rows.add(cells);
    }
    return new Value.Table(rows);
  }

  /** A function's result for the evaluator; a table lies with its first cell on the caller. */
  static ValueEval result(Value value, OperationEvaluationContext context) {
    if (value instanceof Value.Table table) {
      ValueEval[] cells = table.cells().stream().map(Values::cell).toArray(ValueEval[]::new);
      int row = context.getRowIndex();
      int column = context.getColumnIndex();
      return new CacheAreaEval(
          row, column, row + table.height() - 1, column + table.width() - 1, cells);
    }
    return cell(value);
  }

  private static ValueEval cell(Value value) {
    if (value instanceof Value.Numeric number) {
      return new NumberEval(number.number());
    }
    if (value instanceof Value.Text text) {
      return new StringEval(text.text());
    }
    if (value instanceof Value.Fault fault) {
      return error(fault.reason());
    }
    return new StringEval("");
  }

  /** A spreadsheet error by its name; a sentence stands for a wrong argument. */
  private static ErrorEval error(String reason) {
    return Arrays.stream(FormulaError.values())
        .filter(known -> known.getString().equals(reason) && known != FormulaError._NO_ERROR)
        .findFirst()
        .map(known -> ErrorEval.valueOf(known.getCode()))
        .orElse(ErrorEval.VALUE_INVALID);
  }
}
