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
import tenthmark.measurement.repeats.RepeatUncertainty;
import tenthmark.measurement.repeats.Repeats;

/** LAB_REPEATS: the uncertainty of the mean of repeated readings. */
@AutoService(WorksheetFunction.class)
public final class LabRepeats implements WorksheetFunction {

  private static final Parameter<List<Double>> VALUES =
      Parameter.required(
          "values",
          "Range with the repeated readings, at least 2. Blank cells are skipped.",
          Kinds.numbers(2, Kinds.number()));

  private static final Parameter<RepeatUncertainty> HOW =
      Parameter.optional(
          "how",
          "From what: sdom (standard deviation of the mean), halfrange (half the range) or t95 (95"
              + " % interval of the mean). Sdom if left out.",
          Kinds.choice(RepeatUncertainty.class),
          RepeatUncertainty.SDOM);

  private static final Parameter<Double> FLOOR =
      Parameter.optional(
          "floor",
          "The result is never below this, such as the reading uncertainty. 0 if left out.",
          Kinds.notNegative(),
          0.0);

  private static final Declaration DECLARATION =
      new Declaration(
          "REPEATS",
          Family.REPEATS,
          FunctionRole.REPEAT,
          ResultKind.NUMBER,
          "Gives the uncertainty of the mean of repeated readings from their scatter.",
          "When the same thing was read several times under the same conditions. The floor "
              + "keeps it from falling below what one reading can tell.",
          List.of(VALUES, HOW, FLOOR),
          "s = sqrt(sum((value - mean)^2) / (n - 1)); sdom: s / sqrt(n); halfrange: (largest -"
              + " smallest) / 2; t95: t(n - 1) s / sqrt(n) with Student's two-sided 95 % factor t",
          "sdom: JCGM 100:2008, 4.2.2 and 4.2.3; t95: G.3.2; halfrange: common practice, no source",
          Example.of(
              "=LAB_REPEATS(A1:A5;\"sdom\";0.01)",
              List.of(List.of(12.1), List.of(12.4), List.of(12.3), List.of(12.2), List.of(12.5)),
              "0.0707"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    Repeats repeats = new Repeats(arguments.get(VALUES));
    return Value.of(Math.max(arguments.get(HOW).of(repeats), arguments.get(FLOOR)));
  }
}
