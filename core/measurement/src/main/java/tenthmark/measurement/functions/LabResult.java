package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.result.MeasurementResult;
import tenthmark.measurement.result.Style;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.wording.Message;

/** LAB_RESULT: a value with its uncertainty as a rounded record text. */
@AutoService(WorksheetFunction.class)
public final class LabResult implements WorksheetFunction {

  private static final Parameter<Style> STYLE =
      Parameter.optional(
          "style",
          "How to write it: plain (12.34 ± 0.05), brief (12.34(5)), percent (12.34 ± 0.4 %) or"
              + " scientific. Plain if left out.",
          Kinds.choice(Style.class),
          Style.PLAIN);

  private static final Declaration DECLARATION =
      new Declaration(
          "RESULT",
          Family.RESULTS,
          FunctionRole.RESULT,
          ResultKind.TEXT,
          "Writes a value with its uncertainty as a record, both rounded to the same place.",
          "For every result that others read. Keep calculating with the numbers, not with this "
              + "text.",
          List.of(
              ResultParameters.VALUE,
              ResultParameters.UNCERTAINTY,
              CommonParameters.UNIT,
              ResultParameters.DIGITS,
              STYLE),
          ResultParameters.ROUNDING
              + "; a power of ten that both parts share below 0.0001 and from 10^7 on; an"
              + " uncertainty of 0 is written as exact",
          ResultParameters.ROUNDING_SOURCE,
          Example.of("=LAB_RESULT(172.46;0.5;\"mm\")", "172.5 ± 0.5 mm"));

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
    MeasurementResult result =
        MeasurementResult.of(
            arguments.get(ResultParameters.VALUE),
            arguments.get(ResultParameters.UNCERTAINTY),
            arguments.get(CommonParameters.UNIT));
    DigitsRule digits = arguments.get(ResultParameters.DIGITS);
    Style style = arguments.get(STYLE);
    if (!style.canWrite(result, digits)) {
      throw ArgumentException.of("style.percent");
    }
    return Value.of(style.write(result, digits, arguments.sentences()));
  }
}
