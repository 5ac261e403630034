package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.ScaleReading;
import tenthmark.measurement.recording.Spacing;
import tenthmark.measurement.wording.Message;

/** LAB_READING: the reading uncertainty of a scale with marks. */
@AutoService(WorksheetFunction.class)
public final class LabReading implements WorksheetFunction {

  private static final Parameter<Double> DIVISION =
      Parameter.required(
          "division",
          "Smallest step marked on the scale, in the unit of the reading.",
          Kinds.positive());

  private static final Parameter<ToDoubleFunction<Convention>> SPACING =
      Parameter.byConvention(
          "spacing",
          "Wide marks (a tenth) or fine ones (a quarter), or as the workbook says; or a fraction of"
              + " a division, such as 0.5. Wide if left out.",
          new Kind<>(Kind.Form.SINGLE, Message.of("allowed.spacing"), LabReading::judgedIn),
          convention -> own -> own.fraction(Spacing.WIDE));

  private static final Parameter<Integer> ENDS =
      Parameter.optional(
          "ends",
          "Number of places read: 2 for a length, which has a zero end and a far end. 1 if left"
              + " out.",
          Kinds.whole(1, 100),
          1);

  private static final Declaration DECLARATION =
      new Declaration(
          "READING",
          Family.RECORDING,
          FunctionRole.READING,
          ResultKind.NUMBER,
          "Gives the uncertainty of reading a scale by eye.",
          "For every position read by eye off marks: a rule, a dial, a thermometer. Never for "
              + "a digital display.",
          List.of(DIVISION, SPACING, ENDS),
          "division x fraction x ends, with fraction 1/10 for wide and 1/4 for fine marks, or what"
              + " the workbook's convention says",
          Declaration.NO_SOURCE,
          Example.of("=LAB_READING(1;\"fine\";2)", "0.5"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    double division = arguments.get(DIVISION);
    double fraction = arguments.get(SPACING).applyAsDouble(arguments.convention());
    return Value.of(new ScaleReading(division, fraction, arguments.get(ENDS)).uncertainty());
  }

  /** A word leaves the part of a division to the convention. */
  private static ToDoubleFunction<Convention> judgedIn(Argument argument) {
    if (argument.value() instanceof Value.Text text) {
      String word = text.text().strip().toUpperCase(Locale.ROOT);
      for (Spacing spacing : Spacing.values()) {
        if (spacing.name().equals(word)) {
          return convention -> convention.fraction(spacing);
        }
      }
    }
    if (argument.value() instanceof Value.Numeric fraction
        && fraction.number() > 0
        && fraction.number() <= 1) {
      return convention -> fraction.number();
    }
    throw argument.refused();
  }
}
