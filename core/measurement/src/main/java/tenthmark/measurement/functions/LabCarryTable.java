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

/** LAB_CARRYTABLE: how each input contributes to the uncertainty of a calculated result. */
@AutoService(WorksheetFunction.class)
public final class LabCarryTable extends FollowingFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "CARRYTABLE",
          Family.CARRYING,
          FunctionRole.OTHER,
          ResultKind.TABLE,
          "Lists how each input contributes to the uncertainty of a calculated result, and the"
              + " result in the last row.",
          "To see which input is worth measuring better.",
          CarryParameters.ALL,
          "columns input, value, uncertainty, sensitivity coefficient, contribution, share. "
              + CarryParameters.FORMULA
              + " share = contribution / u(result) (straight) or its square (quadrature); with"
              + " correlations c(i) u(i) times the sum over j of r(i,j) c(j) u(j), divided by"
              + " u(result)²; all 0 if u(result) is 0",
          CarryParameters.SOURCE,
          Example.of("=LAB_CARRYTABLE(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "A1"));

  /** For the catalogue. */
  public LabCarryTable() {
    super(DECLARATION);
  }

  @Override
  Value evaluate(CarryTask task, Arguments arguments) {
    return CarriedTable.of(task, arguments);
  }

  @Override
  public Optional<Breakdown> breakdown(Arguments arguments) {
    return breakdownOf(arguments);
  }
}
