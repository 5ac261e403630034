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
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.recording.DisplaySpecification;
import tenthmark.measurement.wording.Message;

/** LAB_DISPLAY: the instrument uncertainty of a digital display. */
@AutoService(WorksheetFunction.class)
public final class LabDisplay implements WorksheetFunction {

  /** Below it a number may be the hundredth that 1% is in a formula; no display is that bad. */
  private static final double SMALLEST_PERCENT = 0.1;

  private static final Kind<Double> PERCENTAGE =
      Kinds.percent(
          Message.of(
              "allowed.percent",
              new Message.Figure("0.1"),
              new Message.Figure("0.05"),
              new Message.Figure("0.01")),
          percent -> percent == 0 || percent >= SMALLEST_PERCENT,
          percent -> percent >= 0);

  private static final Parameter<Double> RESOLUTION =
      Parameter.required(
          "resolution",
          "One count of the last digit shown, in the unit of the reading.",
          Kinds.positive());

  private static final Parameter<Double> READING =
      Parameter.optional(
          "reading", "What the display shows; needed only with a percentage.", Kinds.number());

  private static final Parameter<Double> PERCENT =
      Parameter.optional(
          "percent",
          "Percent of the reading in the maker's specification, such as 0.5 for 0.5 %; below 0.1 a"
              + " text such as \"0.05 %\". 0 if left out.",
          PERCENTAGE,
          0.0);

  private static final Parameter<Double> COUNTS =
      Parameter.optional(
          "counts",
          "Counts of the last digit in the maker's specification. 1 if left out.",
          Kinds.notNegative(),
          1.0);

  private static final Parameter<Double> RANGE =
      Parameter.optional(
          "range",
          "The range that the display is set to, in the unit of the reading; needed only with"
              + " rangepercent.",
          Kinds.positive());

  private static final Parameter<Double> RANGEPERCENT =
      Parameter.optional(
          "rangepercent",
          "Percent of the range in the maker's specification, beside that of the reading. 0 if left"
              + " out.",
          PERCENTAGE,
          0.0);

  private static final Declaration DECLARATION =
      new Declaration(
          "DISPLAY",
          Family.RECORDING,
          FunctionRole.INSTRUMENT,
          ResultKind.NUMBER,
          "Gives the instrument uncertainty of a digital display from the maker's specification.",
          "For every number read off a digital display; nothing else is judged there.",
          List.of(RESOLUTION, READING, PERCENT, COUNTS, RANGE, RANGEPERCENT),
          "|reading| x percent / 100 + counts x resolution + range x rangepercent / 100",
          Declaration.NO_SOURCE,
          Example.of("=LAB_DISPLAY(0.1;412.6;0.5;2)", "2.263"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  /** A display shows nothing that is smaller than one count, but zero. */
  @Override
  public Optional<Message> doubt(Arguments arguments) {
    double resolution = arguments.get(RESOLUTION);
    double reading = Math.abs(arguments.find(READING).orElse(0.0));
    return reading > 0 && reading < resolution
        ? Optional.of(Swapped.doubt(RESOLUTION, resolution, READING, reading))
        : Optional.empty();
  }

  @Override
  public Value evaluate(Arguments arguments) {
    double percent = arguments.get(PERCENT);
    Optional<Double> reading = arguments.find(READING);
    if (percent > 0 && reading.isEmpty()) {
      throw ArgumentException.of("reading.missing");
    }
    return Value.of(
        new DisplaySpecification(arguments.get(RESOLUTION), percent, arguments.get(COUNTS))
                .uncertainty(reading.orElse(0.0))
            + ofRange(arguments));
  }

  private static double ofRange(Arguments arguments) {
    double percent = arguments.get(RANGEPERCENT);
    Optional<Double> range = arguments.find(RANGE);
    if (percent > 0 && range.isEmpty()) {
      throw ArgumentException.of("range.missing");
    }
    return range.orElse(0.0) * (percent / 100);
  }
}
