package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
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

/** LAB_ROUNDEDERROR: an uncertainty rounded to the digits kept, as a number. */
@AutoService(WorksheetFunction.class)
public final class LabRoundedError implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "ROUNDEDERROR",
          Family.RESULTS,
          FunctionRole.ROUNDED,
          ResultKind.NUMBER,
          "Rounds the uncertainty of a value to the digits that are kept.",
          "When the rounded uncertainty is needed as a number, for instance for error bars.",
          List.of(ResultParameters.VALUE, ResultParameters.UNCERTAINTY, ResultParameters.DIGITS),
          ResultParameters.ROUNDING,
          ResultParameters.ROUNDING_SOURCE,
          Example.of("=LAB_ROUNDEDERROR(172.46;0.48)", "0.5"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Message> doubt(Arguments arguments) {
    return ResultParameters.doubt(arguments);
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(ResultParameters.roundedIn(arguments).uncertainty().doubleValue());
  }
}
