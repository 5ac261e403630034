package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
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

/** LAB_BUDGET: the contributions with their shares of the total. */
@AutoService(WorksheetFunction.class)
public final class LabBudget implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "BUDGET",
          Family.RECORDING,
          FunctionRole.OTHER,
          ResultKind.TABLE,
          "Lists the contributions to an uncertainty with the share of each, and the total in the"
              + " last row.",
          "To see which contribution is worth making smaller.",
          List.of(BudgetParameters.TABLE, CommonParameters.COMBINE),
          "columns kind, due to, size, share; share = size / total (straight) or size^2 / total^2"
              + " (quadrature), all 0 if the total is 0",
          "straight: common practice, no source; quadrature: JCGM 100:2008, 5.1.2",
          Example.of(
              "=LAB_BUDGET(A1:C2)",
              List.of(
                  List.of("reading", "millimetre marks, two ends", 0.5),
                  List.of("physical", "soft end of the foam grip", 1.5)),
              "reading"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return BudgetParameters.rowsIn(arguments);
  }

  @Override
  public Optional<Breakdown> breakdown(Arguments arguments) {
    return BudgetParameters.breakdownIn(arguments);
  }
}
