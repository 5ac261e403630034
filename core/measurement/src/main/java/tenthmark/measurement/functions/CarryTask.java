package tenthmark.measurement.functions;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import tenthmark.measurement.carrying.Carried;
import tenthmark.measurement.carrying.Combination;
import tenthmark.measurement.carrying.Correlations;
import tenthmark.measurement.carrying.Quadrature;
import tenthmark.measurement.carrying.Straight;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellModel;
import tenthmark.measurement.formula.Effort;
import tenthmark.measurement.formula.Follower;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/**
 * What a function is asked to carry: a model with its measured inputs and their uncertainties.
 *
 * @param labels what each input is called
 * @param places which cells of the ranges hold the inputs; the others are blank
 * @param cells number of cells of each range
 */
record CarryTask(
    Model model,
    List<String> labels,
    double[] values,
    double[] uncertainties,
    List<Integer> places,
    int cells) {

  private static final int MOST_INPUTS = 10_000;

  /** The task of a call that gives the cells of the result and of the inputs. */
  static CarryTask inCells(Arguments arguments, Follower follower) {
    return inCells(CarryParameters.RESULT, arguments, follower);
  }

  /** The same for another parameter that gives the cell of a result. */
  static CarryTask inCells(Parameter<CellBlock> parameter, Arguments arguments, Follower follower) {
    CellBlock asked = arguments.get(parameter);
    CellAddress result = resultIn(parameter, asked);
    CellBlock inputs = arguments.get(CarryParameters.INPUTS);
    List<CellAddress> cells = cellsIn(inputs);
    List<List<CellContent>> held = inputs.cells().rows(inputs.range());
    List<OptionalDouble> values =
        explained(() -> follower.numbers(inputs.cells(), inputs.range(), held));
    List<OptionalDouble> uncertainties = arguments.get(CarryParameters.UNCERTAINTIES);
    String name = CarryParameters.INPUTS.name();
    List<Integer> places = CarryParameters.places(name, values, uncertainties);
    List<CellAddress> measured = places.stream().map(cells::get).toList();
    Model model = explained(() -> follower.model(asked.cells(), result, measured));
    boolean typed =
        held.stream().flatMap(List::stream).noneMatch(CellContent.Formula.class::isInstance);
    if (!typed && !arguments.isGiven(CarryParameters.CORRELATIONS)) {
      new InputsOfInputs(follower, inputs.cells(), measured, at(places, values))
          .require(at(places, uncertainties), cell -> label(cell, result));
    }
    return of(
        model,
        measured.stream().map(cell -> label(cell, result)).toList(),
        places,
        values,
        uncertainties);
  }

  /** The task, once the model and the places of its inputs are known. */
  static CarryTask of(
      Model model,
      List<String> labels,
      List<Integer> places,
      List<OptionalDouble> values,
      List<OptionalDouble> uncertainties) {
    boolean reached = false;
    for (int i = 0; i < model.inputs(); i++) {
      reached |= model.reaches(i);
    }
    if (!reached) {
      // A formula that cannot be read or followed uses none of them either.
      explained(() -> model.value(at(places, values)));
      throw ArgumentException.of("inputs.unused", String.join(", ", labels));
    }
    return new CarryTask(
        model, labels, at(places, values), at(places, uncertainties), places, values.size());
  }

  /**
   * What comes of computing the result many times.
   *
   * @throws ArgumentException if that is too much beside what this recalculation has done, or a
   *     result is not defined
   */
  <T> T computed(Arguments arguments, long times, Supplier<T> outcome) {
    long size = model instanceof CellModel inCells ? inCells.size() : 1;
    Effort effort = arguments.get(CarryParameters.RESULT).cells().effort();
    return explained(() -> effort.spend(times * size, outcome));
  }

  /** The uncertainties carried to first order. */
  Carried carried() {
    return explained(() -> Carried.through(model, values, uncertainties));
  }

  /** An outcome of the formula engine, or its sentence why there is none. */
  static <T> T explained(Supplier<T> outcome) {
    try {
      return outcome.get();
    } catch (FormulaException problem) {
      throw new ArgumentException(problem.said());
    }
  }

  private static CellAddress resultIn(Parameter<CellBlock> parameter, CellBlock block) {
    if (block.range().width() != 1 || block.range().height() != 1) {
      throw ArgumentException.notAllowed(
          parameter.name(), Argument.inWords(block.range()), Message.of("allowed.formula.cell"));
    }
    return block.range().first();
  }

  private static List<CellAddress> cellsIn(CellBlock inputs) {
    if ((long) inputs.range().width() * inputs.range().height() > MOST_INPUTS) {
      throw ArgumentException.notAllowed(
          CarryParameters.INPUTS.name(),
          Argument.inWords(inputs.range()),
          Message.of("allowed.most.cells", MOST_INPUTS));
    }
    return inputs.range().cells();
  }

  private static String label(CellAddress cell, CellAddress result) {
    return cell.sheet().equals(result.sheet()) ? cell.place() : cell.toString();
  }

  private static double[] at(List<Integer> places, List<OptionalDouble> numbers) {
    return places.stream().mapToDouble(place -> numbers.get(place).getAsDouble()).toArray();
  }

  /** How the call asks to combine the contributions. */
  Combination combination(Arguments arguments) {
    Optional<double[][]> coefficients = CarryParameters.coefficients(arguments, places, cells);
    if (coefficients.isEmpty()) {
      return arguments.get(CommonParameters.COMBINE) == Combine.STRAIGHT
          ? new Straight()
          : new Quadrature();
    }
    return correlations(coefficients.get());
  }

  /** The correlations that a call for standard uncertainties gives, none if it gives none. */
  Optional<Correlations> correlations(Parameter<Value.Table> parameter, Arguments arguments) {
    return CarryParameters.correlations(parameter, arguments, places, cells)
        .map(CarryTask::correlations);
  }

  private static Correlations correlations(double[][] coefficients) {
    Correlations.problemOf(coefficients)
        .ifPresent(
            problem -> {
              throw new ArgumentException(problem);
            });
    return Correlations.of(coefficients);
  }
}
