package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.ArgumentException;
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

/** LAB_LINEBACK: the x that belongs to a measured y, read back off a calibration line. */
@AutoService(WorksheetFunction.class)
public final class LabLineBack implements WorksheetFunction {

  private static final Parameter<List<Double>> READINGS =
      Parameter.required(
          "y0",
          "The y whose x is wanted: one reading, or a range of repeats, which are averaged.",
          Kinds.numbers(1, Kinds.number()));

  private static final Parameter<Double> UNCERTAINTY =
      Parameter.optional(
          "u0",
          "Standard uncertainty of y0, of the mean of repeats. If left out, the scatter of the"
              + " points about the line gives it.",
          Kinds.notNegative());

  private static final Declaration DECLARATION =
      new Declaration(
          "LINEBACK",
          Family.LINES,
          FunctionRole.POINT_OF_LINE,
          ResultKind.TABLE,
          "Gives the x that belongs to a measured y on a fitted calibration line, and in the next"
              + " column its uncertainty.",
          "To turn a reading into a quantity by a calibration line, inside the range of the"
              + " points.",
          parameters(),
          "x0 = (y0 - intercept)/slope, y0 the mean of p readings; u(x0)² = (u(y0)² + u(line at"
              + " x0)²)/slope²; u(y0) = u0, or the residual standard deviation over sqrt(p). To"
              + " first order: the slope is many times its uncertainty. The line: "
              + LineParameters.METHOD,
          "EURACHEM/CITAC CG 4, A5 and E.4; the line: " + LineParameters.SOURCE,
          Example.of("=LAB_LINEBACK(10.5;A1:A5;B1:B5)", LineParameters.LEVER, "6.98997"));

  private static List<Parameter<?>> parameters() {
    List<Parameter<?>> parameters = new ArrayList<>(LineParameters.ALL);
    parameters.add(0, READINGS);
    parameters.add(UNCERTAINTY);
    return parameters;
  }

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  private static double byScatter(Line line) {
    if (line.freedom() == 0) {
      throw ArgumentException.of("lineback.scatter");
    }
    return line.residualDeviation();
  }

  @Override
  public Value evaluate(Arguments arguments) {
    List<Double> readings = arguments.get(READINGS);
    Line line = LineParameters.line(arguments);
    if (line.slope() == 0) {
      throw ArgumentException.of("fit.flat");
    }
    double y = readings.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double u =
        arguments.find(UNCERTAINTY).orElseGet(() -> byScatter(line) / Math.sqrt(readings.size()));
    return new Value.Table(
        List.of(List.of(Value.of(line.placeOf(y)), Value.of(line.placeUncertainty(y, u)))));
  }
}
