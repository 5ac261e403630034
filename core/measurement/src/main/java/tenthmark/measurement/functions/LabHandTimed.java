package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
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
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.HandTiming;

/** LAB_HANDTIMED: the timing uncertainty of one cycle timed by hand. */
@AutoService(WorksheetFunction.class)
public final class LabHandTimed implements WorksheetFunction {

  private static final Parameter<Integer> CYCLES =
      Parameter.optional(
          "cycles",
          "Number of cycles timed in one go, such as turns of a wheel. 1 if left out.",
          Kinds.whole(1, 1_000_000),
          1);

  private static final Parameter<Double> REACTION =
      Parameter.byConvention(
          "reaction",
          "Reaction time of the person with the watch, in the time's unit. Left out: the"
              + " workbook's, else 0.2 s.",
          Kinds.positive(),
          Convention::reactionSeconds);

  private static final Declaration DECLARATION =
      new Declaration(
          "HANDTIMED",
          Family.RECORDING,
          FunctionRole.TIMING,
          ResultKind.NUMBER,
          "Gives the timing uncertainty of one cycle when several are timed together by hand.",
          "When a person starts and stops the clock. Time several cycles together to make it "
              + "small.",
          List.of(CYCLES, REACTION),
          "reaction / cycles",
          Declaration.NO_SOURCE,
          Example.of("=LAB_HANDTIMED(20)", "0.01"));

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    return Value.of(new HandTiming(arguments.get(CYCLES), arguments.get(REACTION)).uncertainty());
  }
}
