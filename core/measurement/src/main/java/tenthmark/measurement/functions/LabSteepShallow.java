package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.OptionalDouble;
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
import tenthmark.measurement.line.ExtremeLines;
import tenthmark.measurement.line.Point;

/** LAB_STEEPSHALLOW: the steepest and the shallowest line through all error bars. */
@AutoService(WorksheetFunction.class)
public final class LabSteepShallow implements WorksheetFunction {

  private static final Parameter<List<OptionalDouble>> UX =
      Parameter.required(
          "ux",
          "Half-length of each error bar in x, or one for all; 0 for none.",
          Kinds.column(Kinds.notNegative()));

  private static final Parameter<List<OptionalDouble>> UY =
      Parameter.required(
          "uy",
          "Half-length of each error bar in y, or one for all; 0 for none.",
          Kinds.column(Kinds.notNegative()));

  private static final Declaration DECLARATION =
      new Declaration(
          "STEEPSHALLOW",
          Family.LINES,
          FunctionRole.FIT,
          ResultKind.TABLE,
          "Gives the steepest and the shallowest line through all error bars, and half their"
              + " difference as uncertainty.",
          "When the error bars are bounds, as in a graph drawn by hand.",
          List.of(LineParameters.X, LineParameters.Y, UX, UY),
          "A line passes through a point's bars if it meets the rectangle from x - ux to x + ux and"
              + " from y - uy to y + uy. Exact, not by trial. Slope and intercept are the middle of"
              + " both lines, their uncertainties half the difference: a bound, not a standard"
              + " uncertainty. An error if no line passes through all bars.",
          Declaration.NO_SOURCE,
          Example.of(
              "=LAB_STEEPSHALLOW(A1:A5;B1:B5;0.1;0.3)", LineParameters.LEVER, "steepest slope"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    List<Point> points = LineParameters.points(arguments, arguments.get(UX), arguments.get(UY), 2);
    ExtremeLines lines = LineParameters.fitted(() -> ExtremeLines.through(points));
    return new LabelledRows(arguments.sentences())
        .with("steepest.slope", lines.steepest().slope())
        .with("steepest.intercept", lines.steepest().intercept())
        .with("shallowest.slope", lines.shallowest().slope())
        .with("shallowest.intercept", lines.shallowest().intercept())
        .with("slope", lines.middleSlope())
        .with("slope.uncertainty", lines.slopeHalfDifference())
        .with("intercept", lines.middleIntercept())
        .with("intercept.uncertainty", lines.interceptHalfDifference())
        .table();
  }
}
