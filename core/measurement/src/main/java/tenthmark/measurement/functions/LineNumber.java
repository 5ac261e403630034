package tenthmark.measurement.functions;

import java.util.function.ToDoubleFunction;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;

/** A function that gives one number of a fitted line. */
abstract class LineNumber implements WorksheetFunction {

  private final Declaration declaration;
  private final ToDoubleFunction<Line> number;

  LineNumber(
      String name,
      FunctionRole role,
      String description,
      ToDoubleFunction<Line> number,
      String exampleResult) {
    this.declaration =
        new Declaration(
            name,
            Family.LINES,
            role,
            ResultKind.NUMBER,
            description,
            "When only this number of the line is needed; LAB_LINE gives all of them.",
            LineParameters.ALL,
            LineParameters.METHOD,
            LineParameters.SOURCE,
            Example.of("=LAB_" + name + "(A1:A5;B1:B5)", LineParameters.LEVER, exampleResult));
    this.number = number;
  }

  @Override
  public final Declaration declaration() {
    return declaration;
  }

  @Override
  public final Value evaluate(Arguments arguments) {
    return Value.of(number.applyAsDouble(LineParameters.line(arguments)));
  }
}
