package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.line.LinearFit;

/**
 * LINEST and LOGEST (y; x; with an intercept; with statistics): the coefficients, that of the last
 * variable first, and the intercept; their standard uncertainties; coefficient of determination and
 * standard deviation of the residuals; F and the degrees of freedom; sums of squares of the
 * regression and of the residuals (OASIS OpenDocument 1.3, part 4, 6.18). LOGEST fits the logarithm
 * of y and gives powers of e for its coefficients.
 *
 * @param function its name
 * @param scale what is done to y before
 * @param back what is done to the coefficients afterwards
 */
record LineEstimate(String function, DoubleUnaryOperator scale, DoubleUnaryOperator back)
    implements FreeRefFunction {

  private static final Value NONE = new Value.Fault(ErrorEval.NA.getErrorString());

  /** A share of the squares that rounding may leave where every point lies on the line. */
  private static final double ROUNDING = 1e-20;

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    List<Value> values =
        Arrays.stream(arguments).map(argument -> Values.argument(argument, context)).toList();
    Regressors regressors = Regressors.of(function, values, scale);
    boolean throughOrigin = !regressors.isOn(values, 2, true);
    LinearFit fit = regressors.fit(throughOrigin);
    List<List<Value>> rows = new ArrayList<>(List.of(coefficients(fit)));
    if (regressors.isOn(values, 3, false)) {
      rows.addAll(statistics(fit, throughOrigin));
    }
    return Values.result(new Value.Table(rows), context);
  }

  private List<Value> coefficients(LinearFit fit) {
    return lastFirst(
        fit,
        i -> back.applyAsDouble(fit.coefficient(i)),
        Value.of(back.applyAsDouble(fit.intercept())));
  }

  private List<List<Value>> statistics(LinearFit fit, boolean throughOrigin) {
    if (fit.residualSquares() <= ROUNDING * fit.explainedSquares()) {
      throw NotCheckableException.of("reason.line.rounding", function);
    }
    Value intercept = throughOrigin ? NONE : Value.of(fit.interceptUncertainty());
    return List.of(
        lastFirst(fit, fit::uncertainty, intercept),
        row(fit, fit.determination(), fit.residualDeviation()),
        row(fit, fit.f(), fit.freedom()),
        row(fit, fit.explainedSquares(), fit.residualSquares()));
  }

  private static List<Value> lastFirst(LinearFit fit, IntToDoubleFunction of, Value intercept) {
    List<Value> row = new ArrayList<>();
    for (int i = fit.variables() - 1; i >= 0; i--) {
      row.add(Value.of(of.applyAsDouble(i)));
    }
    row.add(intercept);
    return row;
  }

  /** Two numbers, and nothing under the further coefficients. */
  private static List<Value> row(LinearFit fit, double left, double right) {
    List<Value> row = new ArrayList<>(List.of(Value.of(left), Value.of(right)));
    row.addAll(Collections.nCopies(fit.variables() - 1, NONE));
    return row;
  }
}
