package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.carrying.Extremes;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.Formulas;

/** LAB_EXTREMES: the lowest and the highest value that a calculated result can take. */
@AutoService(WorksheetFunction.class)
public final class LabExtremes implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "EXTREMES",
          Family.CARRYING,
          ResultKind.TABLE,
          "Gives the lowest and the highest value of a calculated result when each input is taken at"
              + " its lower or upper bound.",
          List.of(CarryParameters.RESULT, CarryParameters.INPUTS, CarryParameters.UNCERTAINTIES),
          "the least and the greatest result over all combinations of value - u and value + u of the"
              + " inputs, u being half-widths, and over the values themselves; at most "
              + Extremes.MOST_INPUTS
              + " inputs with an uncertainty. They are the true bounds if the result rises or falls"
              + " steadily with each input.",
          "common practice, no source",
          Example.of("=LAB_EXTREMES(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "lowest"));

  private final Follower follower = new Follower(new Formulas());

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    CarryTask task = CarryTask.inCells(arguments, follower);
    Extremes extremes =
        CarryTask.explained(() -> Extremes.of(task.model(), task.values(), task.uncertainties()));
    return new LabelledRows()
        .with("lowest", extremes.lowest())
        .with("highest", extremes.highest())
        .table();
  }
}
