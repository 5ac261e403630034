package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;

/** LAB_LINEAT: what a fitted line predicts at one x. */
@AutoService(WorksheetFunction.class)
public final class LabLineAt implements WorksheetFunction {

  private static final Parameter<Double> PLACE =
      Parameter.required("x0", "The x at which the line's y is wanted.", Kinds.number());

  private static final Declaration DECLARATION =
      new Declaration(
          "LINEAT",
          Family.LINES,
          FunctionRole.POINT_OF_LINE,
          ResultKind.TABLE,
          "Gives the y that a fitted line predicts at x0, and in the next column its uncertainty.",
          "To read a value off the fitted line, inside the range of the points.",
          Stream.concat(Stream.of(PLACE), LineParameters.ALL.stream()).toList(),
          "y = intercept + slope x0; u² = u(intercept)² + x0² u(slope)² + 2 x0 u(intercept)"
              + " u(slope) correlation. That is the uncertainty of the line, not of one more"
              + " reading. The line: "
              + LineParameters.METHOD,
          "JCGM 100:2008, H.3.4; the line: " + LineParameters.SOURCE,
          Example.of("=LAB_LINEAT(7;A1:A5;B1:B5)", LineParameters.LEVER, "10.515"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    double place = arguments.get(PLACE);
    Line line = LineParameters.line(arguments);
    return new Value.Table(
        List.of(List.of(Value.of(line.at(place)), Value.of(line.uncertaintyAt(place)))));
  }
}
