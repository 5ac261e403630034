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
import tenthmark.measurement.recording.Rationale;

/** LAB_RATIONALE: the text under a record that says where its uncertainty comes from. */
@AutoService(WorksheetFunction.class)
public final class LabRationale implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "RATIONALE",
          Family.RECORDING,
          FunctionRole.OTHER,
          ResultKind.TEXT,
          "Writes the text under a record that says what each part of its uncertainty is due to.",
          "As a first draft of the text under a record; add what only you know.",
          List.of(BudgetParameters.TABLE, CommonParameters.UNIT, CommonParameters.COMBINE),
          "one sentence for each kind; reading, physical and instrument are called negligible if"
              + " they are absent or 0; sizes to at most four digits",
          Declaration.NO_SOURCE,
          Example.of(
              "=LAB_RATIONALE(A1:C2;\"mm\")",
              List.of(
                  List.of("reading", "millimetre marks, two ends", 0.5),
                  List.of("physical", "the soft ends of the foam grip", 1.5)),
              "The reading uncertainty is 0.5 mm due to millimetre marks, two ends. The physical"
                  + " uncertainty is 1.5 mm due to the soft ends of the foam grip. The instrument"
                  + " uncertainty is negligible. The total is 2 mm, the sum of the"
                  + " contributions."));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(
        new Rationale(
                BudgetParameters.budgetIn(arguments),
                arguments.get(CommonParameters.UNIT),
                arguments.sentences())
            .text());
  }

  @Override
  public Optional<Breakdown> breakdown(Arguments arguments) {
    return BudgetParameters.breakdownIn(arguments);
  }
}
