package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
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
import tenthmark.measurement.result.RecordText;
import tenthmark.measurement.wording.Message;

/** LAB_READBACK: the value, uncertainty or unit out of a record text. */
@AutoService(WorksheetFunction.class)
public final class LabReadBack implements WorksheetFunction {

  private enum Part {
    VALUE,
    UNCERTAINTY,
    UNIT
  }

  private static final Parameter<String> TEXT =
      Parameter.required(
          "text",
          "A record such as 12.34 ± 0.05 mm, 12.34(5) mm or 12.34 mm ± 0.4 %.",
          Kinds.text());

  private static final Parameter<Part> PART =
      Parameter.required(
          "part", "What to read: value, uncertainty or unit.", Kinds.choice(Part.class));

  private static final Declaration DECLARATION =
      new Declaration(
          "READBACK",
          Family.RESULTS,
          FunctionRole.OTHER,
          ResultKind.EITHER,
          "Reads the value, the uncertainty or the unit out of a record text.",
          "When a result was typed as a text and its numbers are needed again.",
          List.of(TEXT, PART),
          "reads every style that LAB_RESULT writes, and +/- for ±, a decimal comma, thin or"
              + " no-break spaces and powers such as e3; a last % means percent of the value,"
              + " unless it follows brackets as in (12 ± 3) %",
          "notations: JCGM 100:2008, 7.2.2",
          Example.of("=LAB_READBACK(\"172.5(5) mm\";\"uncertainty\")", "0.5"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    RecordText text =
        RecordText.read(arguments.get(TEXT))
            .orElseThrow(
                () ->
                    ArgumentException.notAllowed(
                        TEXT.name(),
                        Message.of("found.no.record"),
                        Message.of("allowed.record", new Message.Figure("12.34 ± 0.05 mm"))));
    return switch (arguments.get(PART)) {
      case VALUE -> Value.of(text.value().doubleValue());
      case UNCERTAINTY -> Value.of(uncertaintyOf(text));
      case UNIT -> Value.of(text.unit());
    };
  }

  private static double uncertaintyOf(RecordText text) {
    return text.uncertainty()
        .orElseThrow(() -> ArgumentException.of("text.no.uncertainty"))
        .doubleValue();
  }
}
