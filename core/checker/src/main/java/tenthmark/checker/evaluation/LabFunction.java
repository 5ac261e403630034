package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import tenthmark.measurement.wording.Message;

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
    Map<CellAddress, Message> sentences)
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
    sentence(result, values).ifPresent(sentence -> sentences.put(place(context), sentence));
    return Values.result(result, context);
  }

  private Value call(List<Value> values) {
    try {
      return function.call(values, wording.sentences());
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

  /** A cell shows the sentence of a text as it is; that of a fault is for the report to say. */
  private Optional<Message> sentence(Value result, List<Value> arguments) {
    if (result instanceof Value.Table table) {
      return sentence(table.rows().get(0).get(0), arguments);
    }
    if (result instanceof Value.Fault fault && isSentence(fault.reason())) {
      return Optional.of(refusal(arguments));
    }
    return result instanceof Value.Text text && isSentence(text.text())
        ? Optional.of(Message.verbatim(text.text()))
        : Optional.empty();
  }

  private boolean isSentence(String text) {
    return text.startsWith(name() + ": ");
  }

  private Message refusal(List<Value> arguments) {
    try {
      function.compute(arguments, wording.sentences());
      throw new IllegalStateException(name() + " refuses and takes the same arguments");
    } catch (ArgumentException refused) {
      return Message.of("refusal", name(), refused.said());
    }
  }

  private String name() {
    return function.declaration().displayName();
  }
}
