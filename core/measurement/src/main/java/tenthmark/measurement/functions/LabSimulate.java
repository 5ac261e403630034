package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import tenthmark.measurement.carrying.Correlations;
import tenthmark.measurement.carrying.Distribution;
import tenthmark.measurement.carrying.InputQuantity;
import tenthmark.measurement.carrying.Simulation;
import tenthmark.measurement.catalogue.Argument;
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
import tenthmark.measurement.wording.Message;

/** LAB_SIMULATE: the uncertainty of a calculated result by Monte Carlo. */
@AutoService(WorksheetFunction.class)
public final class LabSimulate extends FollowingFunction {

  private static final Kind<Distribution> EACH = Kinds.choice(Distribution.class);

  private static final Parameter<List<Distribution>> SHAPE =
      Parameter.optional(
          "shape",
          "Rectangular, triangular (uncertainties are half-widths) or normal (standard ones): one,"
              + " or one for each input. Rectangular if left out.",
          new Kind<>(Kind.Form.TEXT, EACH.allowed(), LabSimulate::shapesIn),
          List.of(Distribution.RECTANGULAR));

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

  private static final Parameter<Value.Table> CORRELATIONS =
      Parameter.optional(
          "correlations",
          "Correlation coefficients of the inputs, as a square table in their order; only if all"
              + " are normal. None if left out.",
          Kinds.table());

  private static final Declaration DECLARATION =
      new Declaration(
          "SIMULATE",
          Family.CARRYING,
          FunctionRole.SIMULATED,
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
              SEED,
              CORRELATIONS),
          "each input is drawn around its value, independently or by a normal distribution of all"
              + " with their correlations; mean and standard deviation of the results; the interval"
              + " leaves out 2.5 % of them at either end; coverage factor = half of it over the"
              + " standard deviation",
          "JCGM 101:2008, 6.4, 7.6 and 7.7",
          Example.of("=LAB_SIMULATE(A3;A1:A2;B1:B2)", CarryParameters.HOOP, "mean"));

  /** For the catalogue. */
  public LabSimulate() {
    super(DECLARATION);
  }

  @Override
  Value evaluate(CarryTask task, Arguments arguments) {
    List<Distribution> shapes = shapes(task, arguments);
    int samples = arguments.get(SAMPLES);
    List<InputQuantity> inputs =
        IntStream.range(0, task.values().length)
            .mapToObj(
                i -> new InputQuantity(task.values()[i], task.uncertainties()[i], shapes.get(i)))
            .toList();
    Simulation simulation =
        task.computed(arguments, samples, () -> simulated(task, inputs, arguments));
    return new LabelledRows(arguments.sentences())
        .with("mean", simulation.mean())
        .with("standard.uncertainty", simulation.standardUncertainty())
        .with("interval.from", simulation.lower())
        .with("interval.to", simulation.upper())
        .with("coverage.factor", simulation.coverageFactor())
        .table();
  }

  private static Simulation simulated(
      CarryTask task, List<InputQuantity> inputs, Arguments arguments) {
    int samples = arguments.get(SAMPLES);
    int seed = arguments.get(SEED);
    return task.correlations(CORRELATIONS, arguments)
        .map(known -> correlated(task, inputs, known, samples, seed))
        .orElseGet(() -> Simulation.run(task.model(), inputs, samples, seed));
  }

  private static Simulation correlated(
      CarryTask task, List<InputQuantity> inputs, Correlations known, int samples, int seed) {
    if (inputs.stream().anyMatch(input -> input.distribution() != Distribution.NORMAL)) {
      throw ArgumentException.of("correlations.shape");
    }
    return Simulation.correlated(task.model(), inputs, known, samples, seed);
  }

  /** The shape of each input that counts. */
  private static List<Distribution> shapes(CarryTask task, Arguments arguments) {
    List<Distribution> given = arguments.get(SHAPE);
    if (given.size() == 1) {
      return Collections.nCopies(task.values().length, given.get(0));
    }
    if (given.size() != task.cells()) {
      throw ArgumentException.of(
          "cells.unequal",
          SHAPE.name(),
          Message.counted("cells", given.size()),
          CarryParameters.INPUTS.name(),
          task.cells());
    }
    return task.places().stream().map(given::get).toList();
  }

  /** The shapes in a range, rectangular where it is blank. */
  private static List<Distribution> shapesIn(Argument argument) {
    Value.Table table = argument.table();
    List<Distribution> shapes = new ArrayList<>();
    for (int row = 0; row < table.height(); row++) {
      for (int column = 0; column < table.width(); column++) {
        boolean blank = table.rows().get(row).get(column) instanceof Value.Blank;
        shapes.add(blank ? Distribution.RECTANGULAR : argument.cell(row, column, EACH));
      }
    }
    return shapes;
  }
}
