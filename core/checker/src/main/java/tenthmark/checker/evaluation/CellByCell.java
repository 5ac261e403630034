package tenthmark.checker.evaluation;

import java.util.stream.IntStream;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.FunctionEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.function.FunctionMetadataRegistry;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.functions.Function;

/**
 * A function of single values in an array formula, which calculates it for each cell of its
 * arguments. POI gives an error.
 *
 * @param function for one cell
 */
record CellByCell(Function function) implements FreeRefFunction {

  /** A function of POI by its name. */
  static CellByCell of(String name) {
    return new CellByCell(
        FunctionEval.getBasicFunction(FunctionMetadataRegistry.lookupIndexByName(name)));
  }

  @Override
  public ValueEval evaluate(ValueEval[] arguments, OperationEvaluationContext context) {
    ArrayArguments cells = ArrayArguments.of(arguments);
    return cells.results(
        context,
        (row, column) ->
            function.evaluate(
                IntStream.range(0, arguments.length)
                    .mapToObj(index -> cells.at(index, row, column))
                    .toArray(ValueEval[]::new),
                context.getRowIndex(),
                context.getColumnIndex()));
  }
}
