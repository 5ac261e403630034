package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Message;

/**
 * A worksheet function as the evaluator calls it.
 *
 * @param function the function
 * @param cells the workbook, for arguments that are the cells themselves
 * @param convention of the workbook
 * @param wording what the function writes in
 * @param sentences where the sentence about a refused argument goes, by the cell that called
 * @param doubts where the sentence about arguments goes that are hardly meant, likewise
 */
record LabFunction(
    WorksheetFunction function,
    Cells cells,
    Supplier<Convention> convention,
    OfficeWording wording,
    Map<CellAddress, Message> sentences,
    Map<CellAddress, Message> doubts)
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
    return Values.result(call(values, context), context);
  }

  private Value call(List<Value> values, OperationEvaluationContext context) {
    try {
      Value result = function.compute(values, wording.sentences(), convention);
      function
          .doubt(values, wording.sentences(), convention)
          .ifPresent(doubt -> doubts.put(place(context), Message.of("refusal", name(), doubt)));
      return result;
    } catch (ArgumentException refusal) {
      String sentence = function.sentence(refusal, wording.sentences());
      Value shown = function.refused(sentence);
      // A cell shows the sentence of a text as it is; that of a fault is for the report to say.
      sentences.put(
          place(context),
          shown instanceof Value.Fault
              ? Message.of("refusal", name(), refusal.said())
              : Message.verbatim(sentence));
      return shown;
    } catch (RuntimeException fault) {
      throw NotCheckableException.because(fault, "reason.failed", name(), fault);
    }
  }

  private boolean takesCells(int index) {
    List<Parameter<?>> parameters = function.declaration().parameters();
    if (parameters.isEmpty()) {
      return false;
    }
    return parameters.get(Math.min(index, parameters.size() - 1)).form() == Kind.Form.REFERENCE;
  }

  private static CellAddress place(OperationEvaluationContext context) {
    String sheet = context.getWorkbook().getSheetName(context.getSheetIndex());
    return new CellAddress(sheet, context.getColumnIndex(), context.getRowIndex());
  }

  private String name() {
    return function.declaration().displayName();
  }
}
