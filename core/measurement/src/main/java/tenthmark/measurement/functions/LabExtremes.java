package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.carrying.Extremes;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

/** LAB_EXTREMES: the lowest and the highest value that a calculated result can take. */
@AutoService(WorksheetFunction.class)
public final class LabExtremes extends FollowingFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "EXTREMES",
          Family.CARRYING,
          FunctionRole.OTHER,
          ResultKind.TABLE,
          "Gives the lowest and the highest value of a calculated result when each input is taken"
              + " at its lower or upper bound.",
          "As a check of LAB_CARRY when the uncertainties are large or the formula bends "
              + "strongly.",
          List.of(CarryParameters.RESULT, CarryParameters.INPUTS, CarryParameters.UNCERTAINTIES),
          "the least and the greatest result over all combinations of value - u and value + u of"
              + " the inputs, u being half-widths, and over the values themselves; at most "
              + Extremes.MOST_INPUTS
              + " inputs with an uncertainty. They are the true bounds if the result rises or falls"
              + " steadily with each input.",
          Declaration.NO_SOURCE,
          Example.of("=LAB_EXTREMES(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "lowest"));

  /** For the catalogue. */
  public LabExtremes() {
    super(DECLARATION);
  }

  @Override
  Value evaluate(CarryTask task, Arguments arguments) {
    Extremes extremes =
        task.computed(
            arguments,
            Extremes.corners(task.uncertainties()),
            () -> Extremes.of(task.model(), task.values(), task.uncertainties()));
    return new LabelledRows(arguments.sentences())
        .with("lowest", extremes.lowest())
        .with("highest", extremes.highest())
        .table();
  }
}
