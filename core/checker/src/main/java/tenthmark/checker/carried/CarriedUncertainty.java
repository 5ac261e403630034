package tenthmark.checker.carried;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import tenthmark.measurement.carrying.Carried;
import tenthmark.measurement.carrying.Combination;
import tenthmark.measurement.carrying.Extremes;
import tenthmark.measurement.carrying.Quadrature;
import tenthmark.measurement.carrying.Straight;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.wording.Message;

/**
 * What the recorded uncertainties of its inputs make of a value's.
 *
 * @param inputs that the value is calculated from
 * @param sensitivities the partial derivative of the value along each input; none if one is not
 *     defined
 * @param sizes the uncertainty of the value for each way in which it could be computed
 * @param problem why a derivative is not defined, if one is not
 */
public record CarriedUncertainty(
    List<RecordedInput> inputs,
    List<Double> sensitivities,
    Map<Way, Double> sizes,
    Optional<Message> problem) {

  /** More would take two results each at twice as many corners. */
  private static final int MOST_INPUTS_AT_EXTREMES = 10;

  private static final Map<Way, Combination> COMBINATIONS =
      Map.of(Way.STRAIGHT, new Straight(), Way.QUADRATURE, new Quadrature());

  /** Copies the lists. */
  public CarriedUncertainty {
    inputs = List.copyOf(inputs);
    sensitivities = List.copyOf(sensitivities);
    sizes = Map.copyOf(sizes);
  }

  /**
   * Carries uncertainties through a model, in every way.
   *
   * @throws FormulaException if none is possible
   */
  static CarriedUncertainty through(Model model, List<RecordedInput> inputs) {
    double[] values = inputs.stream().mapToDouble(RecordedInput::value).toArray();
    double[] uncertainties = inputs.stream().mapToDouble(RecordedInput::uncertainty).toArray();
    Map<Way, Double> sizes = new EnumMap<>(Way.class);
    halfRange(model, values, uncertainties).ifPresent(size -> sizes.put(Way.EXTREMES, size));
    List<Double> sensitivities = new ArrayList<>();
    Optional<Message> problem = Optional.empty();
    try {
      Carried carried = Carried.through(model, values, uncertainties);
      COMBINATIONS.forEach((way, combination) -> sizes.put(way, carried.uncertainty(combination)));
      for (double sensitivity : carried.sensitivities()) {
        sensitivities.add(sensitivity);
      }
    } catch (FormulaException undefined) {
      // Where the value bends or jumps, its extremes may still be compared.
      if (sizes.isEmpty()) {
        throw undefined;
      }
      problem = Optional.of(undefined.said());
    }
    return new CarriedUncertainty(inputs, sensitivities, sizes, problem);
  }

  private static Optional<Double> halfRange(Model model, double[] values, double[] uncertainties) {
    if (values.length > MOST_INPUTS_AT_EXTREMES) {
      return Optional.empty();
    }
    try {
      Extremes extremes = Extremes.of(model, values, uncertainties);
      return Optional.of((extremes.highest() - extremes.lowest()) / 2);
    } catch (FormulaException undefined) {
      return Optional.empty();
    }
  }

  /** The size that a straight sum or quadrature gives without one input. */
  public double without(int input, Way way) {
    double[] contributions =
        IntStream.range(0, sensitivities.size())
            .mapToDouble(i -> i == input ? 0 : sensitivities.get(i) * inputs.get(i).uncertainty())
            .toArray();
    return COMBINATIONS.get(way).total(contributions);
  }

  /** Whether every size is zero, because all inputs are exact or do not change the value. */
  boolean isZero() {
    return sizes.values().stream().allMatch(size -> size == 0);
  }
}
