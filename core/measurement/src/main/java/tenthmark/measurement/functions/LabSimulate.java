package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.IntStream;
import tenthmark.measurement.carrying.Distribution;
import tenthmark.measurement.carrying.InputQuantity;
import tenthmark.measurement.carrying.Simulation;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

/** LAB_SIMULATE: the uncertainty of a calculated result by Monte Carlo. */
@AutoService(WorksheetFunction.class)
public final class LabSimulate extends FollowingFunction {

  private static final Parameter<Distribution> SHAPE =
      Parameter.optional(
          "shape",
          "How true values lie: rectangular or triangular (uncertainties are half-widths),"
              + " or normal (standard ones). Rectangular if left out.",
          Kinds.choice(Distribution.class),
          Distribution.RECTANGULAR);

  private static final Parameter<Integer> SAMPLES =
      Parameter.optional(
          "samples",
          "Number of draws, from 10 to 1000000. 100000 if left out.",
          Kinds.whole(10, 1_000_000),
          100_000);

  private static final Parameter<Integer> SEED =
      Parameter.optional(
          "seed",
          "A whole number; the same one gives the same draws. 1 if left out.",
          Kinds.whole(0, Integer.MAX_VALUE),
          1);

  private static final Declaration DECLARATION =
      new Declaration(
          "SIMULATE",
          Family.CARRYING,
          ResultKind.TABLE,
          "Gives the mean, the standard uncertainty and the 95 % interval of a calculated result by"
              + " drawing the inputs at random (Monte Carlo).",
          "When the uncertainties are large, the formula bends strongly, or the shape of the "
              + "result matters.",
          List.of(
              CarryParameters.RESULT,
              CarryParameters.INPUTS,
              CarryParameters.UNCERTAINTIES,
              SHAPE,
              SAMPLES,
              SEED),
          "each input is drawn independently around its value; mean and standard deviation of the"
              + " results; the interval leaves out 2.5 % of them at either end",
          "JCGM 101:2008, 6.4, 7.6 and 7.7",
          Example.of("=LAB_SIMULATE(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "mean"));

  /** For the catalogue. */
  public LabSimulate() {
    super(DECLARATION);
  }

  @Override
  Value evaluate(CarryTask task, Arguments arguments) {
    Distribution shape = arguments.get(SHAPE);
    int samples = arguments.get(SAMPLES);
    int seed = arguments.get(SEED);
    List<InputQuantity> inputs =
        IntStream.range(0, task.values().length)
            .mapToObj(i -> new InputQuantity(task.values()[i], task.uncertainties()[i], shape))
            .toList();
    Simulation simulation =
        task.computed(
            arguments, samples, () -> Simulation.run(task.model(), inputs, samples, seed));
    return new LabelledRows(arguments.sentences())
        .with("mean", simulation.mean())
        .with("standard.uncertainty", simulation.standardUncertainty())
        .with("interval.from", simulation.lower())
        .with("interval.to", simulation.upper())
        .table();
  }
}
