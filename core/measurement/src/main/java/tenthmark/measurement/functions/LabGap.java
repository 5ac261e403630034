package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.wording.Message;

/** LAB_GAP: the difference of two results over the difference that their uncertainties allow. */
@AutoService(WorksheetFunction.class)
public final class LabGap implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "GAP",
          Family.COMPARING,
          FunctionRole.COMPARISON,
          ResultKind.NUMBER,
          "Gives the difference of two results over the difference that their uncertainties allow;"
              + " up to 1 they agree.",
          "To compare with an accepted value or with another group, as a number.",
          ComparisonParameters.ALL,
          ComparisonParameters.FORMULA,
          ComparisonParameters.SOURCE,
          Example.of("=LAB_GAP(172.5;0.5;170;2)", "1.0"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Message> doubt(Arguments arguments) {
    return ComparisonParameters.doubt(arguments);
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(ComparisonParameters.comparisonIn(arguments).gap().doubleValue());
  }
}
