package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.OptionalDouble;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.line.Line;
import tenthmark.measurement.wording.Sentences;

/** LAB_LINE: a straight line fitted to points, with all that is known about it. */
@AutoService(WorksheetFunction.class)
public final class LabLine implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "LINE",
          Family.LINES,
          FunctionRole.LINE,
          ResultKind.TABLE,
          "Fits a straight line to points and gives slope, intercept, their uncertainties and how"
              + " well the points fit.",
          "When points should lie on a straight line, and the line's numbers are the result.",
          LineParameters.ALL,
          LineParameters.METHOD
              + " The correlation is that of slope and intercept, 0 through the origin. The"
              + " residual standard deviation is sqrt(sum((y - line)²)/degrees of freedom), without"
              + " weights, in the unit of y. Without ux and uy there is no chi-squared.",
          LineParameters.SOURCE,
          Example.of("=LAB_LINE(A1:A5;B1:B5;;0.2)", LineParameters.LEVER, "slope"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    Line line = LineParameters.line(arguments);
    return new LabelledRows(arguments.sentences())
        .with("slope", line.slope())
        .with("intercept", line.intercept())
        .with("slope.uncertainty", line.slopeUncertainty())
        .with("intercept.uncertainty", line.interceptUncertainty())
        .with("correlation", line.correlation())
        .with(
            "chi.squared", shown(line.chiSquared(), "label.needs.ux.or.uy", arguments.sentences()))
        .with("freedom", line.freedom())
        .with("residual.standard.deviation", residual(line, arguments.sentences()))
        .table();
  }

  private static Value residual(Line line, Sentences sentences) {
    return line.freedom() == 0
        ? Value.of(sentences.say("label.needs.point"))
        : Value.of(line.residualDeviation());
  }

  /** Chi-squared as a cell shows it, or what it takes. */
  static Value shown(OptionalDouble chiSquared, String needed, Sentences sentences) {
    return chiSquared.isPresent()
        ? Value.of(chiSquared.getAsDouble())
        : Value.of(sentences.say(needed));
  }
}
