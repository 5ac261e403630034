package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.line.LinearFit;

/**
 * STEYX and RSQ (y; x): one number about the line through points (OASIS OpenDocument 1.3, part 4,
 * 6.18).
 *
 * @param function its name
 * @param number which one
 */
record LineScatter(String function, ToDoubleFunction<LinearFit> number) implements FreeRefFunction {

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    List<Value> values =
        Arrays.stream(arguments).map(argument -> Values.argument(argument, context)).toList();
    Regressors regressors = Regressors.of(function, values, DoubleUnaryOperator.identity());
    if (regressors.x()[0].length > 1) {
      throw NotCheckableException.of("reason.line.variables", function);
    }
    return Values.result(Value.of(number.applyAsDouble(regressors.fit(false))), context);
  }
}
