package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.Formulas;

/** LAB_CARRY: the uncertainty of a result that is calculated in cells. */
@AutoService(WorksheetFunction.class)
public final class LabCarry implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "CARRY",
          Family.CARRYING,
          ResultKind.NUMBER,
          "Gives the uncertainty of a calculated result, carried through the formula that stands in"
              + " the result's cell.",
          CarryParameters.ALL,
          CarryParameters.FORMULA,
          CarryParameters.SOURCE,
          Example.of("=LAB_CARRY(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "0.00336"));

  private final Follower follower = new Follower(new Formulas());

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    CarryTask task = CarryTask.inCells(arguments, follower);
    return Value.of(task.carried().uncertainty(task.combination(arguments)));
  }
}
