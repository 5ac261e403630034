package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
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
import tenthmark.measurement.coverage.CoverageFactor;
import tenthmark.measurement.wording.Message;

/** LAB_COVER: the coverage factor for a level of confidence. */
@AutoService(WorksheetFunction.class)
public final class LabCover implements WorksheetFunction {

  /** Key of the word that LAB_FREEDOM gives, and this function takes, for no limit. */
  static final String INFINITE = "word.infinite";

  private static final Parameter<Double> FREEDOM =
      Parameter.required(
          "freedom",
          "Degrees of freedom, 1 or greater, whole or not; or the word infinite.",
          Kinds.orWord(
              Kinds.numberThat(Message.of("allowed.freedom"), freedom -> freedom >= 1),
              INFINITE,
              Double.POSITIVE_INFINITY));

  private static final Parameter<Double> LEVEL =
      Parameter.optional(
          "level",
          "Level of confidence in percent, such as 95. 95 if left out.",
          Kinds.percent(
              Message.of("allowed.level", 95, new Message.Figure("0.95")),
              level -> level > 1,
              level -> level > 0 && level < 100),
          95.0);

  private static final Declaration DECLARATION =
      new Declaration(
          "COVER",
          Family.STANDARD,
          FunctionRole.STATISTIC,
          ResultKind.NUMBER,
          "Gives the coverage factor k that expands a standard uncertainty to a level of"
              + " confidence.",
          "To state an interval with a level of confidence: U = k times the standard "
              + "uncertainty.",
          List.of(FREEDOM, LEVEL),
          "the t for which level percent of Student's distribution lie between -t and t. A freedom"
              + " that is not whole is used as it is, not cut to the whole number below: that is"
              + " the interpolation of G.4.1 done exactly. For the cut, use INT(freedom).",
          "JCGM 100:2008, G.3.2, G.4.1 and table G.2",
          Example.of("=LAB_COVER(9;95)", "2.2622"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(CoverageFactor.of(arguments.get(FREEDOM), arguments.get(LEVEL) / 100));
  }
}
