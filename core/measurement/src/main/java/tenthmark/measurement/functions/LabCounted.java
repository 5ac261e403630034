package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
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
import tenthmark.measurement.recording.CountRate;
import tenthmark.measurement.wording.Message;

/** LAB_COUNTED: the rate of events that come by chance, with its uncertainty. */
@AutoService(WorksheetFunction.class)
public final class LabCounted implements WorksheetFunction {

  /** From here on not every whole number is a double. */
  private static final double MOST = 0x1p53;

  private static final Parameter<Double> COUNTS =
      Parameter.required(
          "counts", "Number of events counted, such as pulses of a counter.", whole());

  private static final Parameter<Double> TIME =
      Parameter.optional(
          "time",
          "Time for which they were counted. 1 if left out, so that the result is a number of"
              + " counts.",
          Kinds.positive(),
          1.0);

  private static final Parameter<Double> BACKGROUND =
      Parameter.optional(
          "background", "Events counted without the source. None if left out.", whole());

  private static final Parameter<Double> BACKGROUNDTIME =
      Parameter.optional(
          "backgroundtime",
          "Time for which the background was counted. The same as time if left out.",
          Kinds.positive());

  private static final Parameter<Double> DEADTIME =
      Parameter.optional(
          "deadtime",
          "Time for which the counter is blind after each event, in the unit of time. 0 if left"
              + " out.",
          Kinds.notNegative(),
          0.0);

  private static final Declaration DECLARATION =
      new Declaration(
          "COUNTED",
          Family.STANDARD,
          FunctionRole.STANDARD,
          ResultKind.TABLE,
          "Gives the rate of events that come by chance, less the background, and in the next"
              + " column its uncertainty.",
          "For what a counter counts that comes by chance, such as radiation: never for turns or"
              + " for things that can be counted again.",
          List.of(COUNTS, TIME, BACKGROUND, BACKGROUNDTIME, DEADTIME),
          "r = counts/time; rate = r/(1 - r deadtime); u(rate) = sqrt(counts)/time/(1 - r"
              + " deadtime)²; less the same of the background, u² = u(rate)² + u(background)²;"
              + " sqrt(1) for no counts. A standard uncertainty.",
          "Poisson counts and dead time: G. F. Knoll, Radiation Detection and Measurement, chapters"
              + " 3 and 4; no counts: common practice, no source",
          Example.of("=LAB_COUNTED(1071;60;521;60)", "9.1667"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    double time = arguments.get(TIME);
    double dead = arguments.get(DEADTIME);
    CountRate whole = rate(COUNTS, arguments.get(COUNTS), time, dead);
    if (arguments.find(BACKGROUND).isEmpty()) {
      return row(whole.rate(), whole.uncertainty());
    }
    CountRate background =
        rate(
            BACKGROUND,
            arguments.get(BACKGROUND),
            arguments.find(BACKGROUNDTIME).orElse(time),
            dead);
    return row(
        whole.rate() - background.rate(),
        Math.hypot(whole.uncertainty(), background.uncertainty()));
  }

  private static CountRate rate(
      Parameter<Double> counted, double counts, double time, double deadTime) {
    if (counts * deadTime >= time) {
      throw ArgumentException.of("deadtime.long", counted.name());
    }
    return new CountRate(counts, time, deadTime);
  }

  private static Value row(double rate, double uncertainty) {
    return new Value.Table(List.of(List.of(Value.of(rate), Value.of(uncertainty))));
  }

  private static Kind<Double> whole() {
    return Kinds.numberThat(
        Message.of("allowed.counts"), n -> n >= 0 && n <= MOST && n == Math.rint(n));
  }
}
