package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.Cells;

/**
 * A worksheet function as the evaluator calls it.
 *
 * @param function the function
 * @param cells the workbook, for arguments that are the cells themselves
 * @param wording what the function writes in
 * @param sentences where the sentence about a refused argument goes, by the cell that called
 */
record LabFunction(
    WorksheetFunction function,
    Cells cells,
    OfficeWording wording,
    Map<CellAddress, String> sentences)
    implements FreeRefFunction {

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    List<Value> values = new ArrayList<>();
    for (int i = 0; i < arguments.length; i++) {
      values.add(
          takesCells(i)
              ? Values.reference(arguments[i], context, cells)
              : Values.argument(arguments[i], context));
    }
    Value result = call(values);
    note(result, context);
    return Values.result(result, context);
  }

  private Value call(List<Value> values) {
    try {
      Value result = function.call(values, wording.sentences());
      // No cell shows the sentence of a fault, only the report does, which is in English.
      return result instanceof Value.Fault ? function.call(values) : result;
    } catch (RuntimeException fault) {
      String name = function.declaration().displayName();
      throw new NotCheckableException(name + " failed in the checker: " + fault, fault);
    }
  }

  private boolean takesCells(int index) {
    List<Parameter<?>> parameters = function.declaration().parameters();
    if (parameters.isEmpty()) {
      return false;
    }
    return parameters.get(Math.min(index, parameters.size() - 1)).form() == Kind.Form.REFERENCE;
  }

  private void note(Value result, OperationEvaluationContext context) {
    String sentence = sentence(result);
    if (sentence.startsWith(function.declaration().displayName() + ": ")) {
      String sheet = context.getWorkbook().getSheetName(context.getSheetIndex());
      sentences.put(
          new CellAddress(sheet, context.getColumnIndex(), context.getRowIndex()), sentence);
    }
  }

  private static String sentence(Value result) {
    if (result instanceof Value.Table table) {
      return sentence(table.rows().get(0).get(0));
    }
    if (result instanceof Value.Fault fault) {
      return fault.reason();
    }
    return result instanceof Value.Text text ? text.text() : "";
  }
}
