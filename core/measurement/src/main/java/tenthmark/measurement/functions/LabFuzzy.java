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
import tenthmark.measurement.recording.FuzzyEdges;

/** LAB_FUZZY: the physical uncertainty of ends that are not sharp. */
@AutoService(WorksheetFunction.class)
public final class LabFuzzy implements WorksheetFunction {

  private static final Parameter<List<Double>> EXTENT =
      Parameter.repeated(
          "extent",
          "Length over which one end is blurred, in the unit of the value; one for each end, as"
              + " numbers or ranges.",
          Kinds.numbers(1, Kinds.notNegative()));

  private static final Declaration DECLARATION =
      new Declaration(
          "FUZZY",
          Family.RECORDING,
          FunctionRole.PHYSICAL,
          ResultKind.NUMBER,
          "Gives the physical uncertainty of an object whose ends are soft, rounded or blurred.",
          "When the thing itself does not end sharply, however good the instrument is.",
          List.of(EXTENT),
          "sum over the ends of extent / 2",
          Declaration.NO_SOURCE,
          Example.of("=LAB_FUZZY(3;2)", "2.5"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(
        new FuzzyEdges(arguments.all(EXTENT).stream().flatMap(List::stream).toList())
            .uncertainty());
  }
}
