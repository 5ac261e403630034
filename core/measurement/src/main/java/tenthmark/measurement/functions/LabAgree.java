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

/** LAB_AGREE: the sentence that says whether two results agree. */
@AutoService(WorksheetFunction.class)
public final class LabAgree implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "AGREE",
          Family.COMPARING,
          FunctionRole.COMPARISON,
          ResultKind.TEXT,
          "Says whether two results agree within their uncertainties, and by how much they differ.",
          "To compare with an accepted value or with another group, as a sentence.",
          ComparisonParameters.ALL,
          ComparisonParameters.FORMULA,
          ComparisonParameters.SOURCE,
          Example.of(
              "=LAB_AGREE(172.5;0.5;170.5;2)",
              "Agree: the values differ by 2, which is 0.8 of the 2.5 that their uncertainties"
                  + " allow."));

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
    return Value.of(ComparisonParameters.comparisonIn(arguments).inWords(arguments.sentences()));
  }
}
