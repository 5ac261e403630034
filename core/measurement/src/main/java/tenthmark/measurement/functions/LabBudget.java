package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.recording.Budget;
import tenthmark.measurement.recording.Contribution;
import tenthmark.measurement.wording.Sentences;

/** LAB_BUDGET: the contributions with their shares of the total. */
@AutoService(WorksheetFunction.class)
public final class LabBudget implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "BUDGET",
          Family.RECORDING,
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
    Sentences sentences = arguments.sentences();
    Budget budget = BudgetParameters.budgetIn(arguments);
    List<List<Value>> rows = new ArrayList<>();
    List<Double> shares = budget.shares();
    for (int i = 0; i < shares.size(); i++) {
      Contribution contribution = budget.contributions().get(i);
      rows.add(
          List.of(
              Value.of(contribution.kind().word(sentences)),
              Value.of(contribution.dueTo()),
              Value.of(contribution.size()),
              Value.of(shares.get(i))));
    }
    double total = budget.total().doubleValue();
    rows.add(
        List.of(
            Value.of(sentences.say("label.total")),
            Value.BLANK,
            Value.of(total),
            Value.of(total == 0 ? 0 : 1)));
    return new Value.Table(rows);
  }
}
