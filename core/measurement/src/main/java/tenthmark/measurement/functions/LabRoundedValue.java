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

/** LAB_ROUNDEDVALUE: a value rounded to its uncertainty, as a number. */
@AutoService(WorksheetFunction.class)
public final class LabRoundedValue implements WorksheetFunction {

  private static final Declaration DECLARATION =
      new Declaration(
          "ROUNDEDVALUE",
          Family.RESULTS,
          FunctionRole.ROUNDED,
          ResultKind.NUMBER,
          "Rounds a value to the last digit kept of its uncertainty.",
          "When the rounded value is needed as a number, for instance in a graph.",
          List.of(ResultParameters.VALUE, ResultParameters.UNCERTAINTY, ResultParameters.DIGITS),
          ResultParameters.ROUNDING,
          ResultParameters.ROUNDING_SOURCE,
          Example.of("=LAB_ROUNDEDVALUE(172.46;0.48)", "172.5"));

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
    return Value.of(ResultParameters.roundedIn(arguments).value().doubleValue());
  }
}
