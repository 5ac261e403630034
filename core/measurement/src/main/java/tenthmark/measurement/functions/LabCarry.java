package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Breakdown;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

/** LAB_CARRY: the uncertainty of a result that is calculated in cells. */
@AutoService(WorksheetFunction.class)
public final class LabCarry extends FollowingFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "CARRY",
          Family.CARRYING,
          FunctionRole.CARRIED,
          ResultKind.NUMBER,
          "Gives the uncertainty of a calculated result, carried through the formula that stands in"
              + " the result's cell.",
          "When a result is calculated in the sheet: the formula is not typed a second time. "
              + "Straight for bounds that may all err the same way, quadrature for independent "
              + "standard uncertainties.",
          CarryParameters.ALL,
          CarryParameters.FORMULA,
          CarryParameters.SOURCE,
          Example.of("=LAB_CARRY(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "0.00336"));

  /** For the catalogue. */
  public LabCarry() {
    super(DECLARATION);
  }

  @Override
  Value evaluate(CarryTask task, Arguments arguments) {
    return Value.of(task.carried().uncertainty(task.combination(arguments)));
  }

  @Override
  public Optional<Breakdown> breakdown(Arguments arguments) {
    return breakdownOf(arguments);
  }
}
