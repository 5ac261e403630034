package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.line.LinearFit;

/**
 * TREND and GROWTH (y; x; new x; with an intercept): what the fit gives at new values of x, at
 * those of x itself if they are left out (OASIS OpenDocument 1.3, part 4, 6.18). GROWTH fits the
 * logarithm of y. POI fits another curve where there are several variables.
 *
 * @param function its name
 * @param scale what is done to y before
 * @param back what is done to the results afterwards
 */
record LineValues(String function, DoubleUnaryOperator scale, DoubleUnaryOperator back)
    implements FreeRefFunction {

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    List<Value> values =
        Arrays.stream(arguments).map(argument -> Values.argument(argument, context)).toList();
    Regressors regressors = Regressors.of(function, values, scale);
    LinearFit fit = regressors.fit(!regressors.isOn(values, 3, true));
    int place = Regressors.isGiven(values, 2) ? 2 : Regressors.isGiven(values, 1) ? 1 : 0;
    double[][] rows = place == 0 ? regressors.x() : regressors.rows(values.get(place));
    double[] results =
        Arrays.stream(rows).mapToDouble(row -> back.applyAsDouble(fit.at(row))).toArray();
    Value shape = values.get(place);
    boolean single = regressors.x()[0].length == 1;
    int width = single ? width(shape) : regressors.upright() ? 1 : results.length;
    return Values.result(table(results, width), context);
  }

  private static int width(Value shape) {
    return shape instanceof Value.Table table ? table.width() : 1;
  }

  private static Value table(double[] results, int width) {
    return new Value.Table(
        IntStream.range(0, results.length / width)
            .mapToObj(
                row ->
                    IntStream.range(0, width)
                        .mapToObj(column -> Value.of(results[row * width + column]))
                        .toList())
            .toList());
  }
}
