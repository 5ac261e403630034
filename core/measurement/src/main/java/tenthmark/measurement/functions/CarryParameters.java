package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/** The parameters of the functions that carry uncertainties through a calculation. */
final class CarryParameters {

  static final Parameter<CellBlock> RESULT =
      Parameter.required(
          "result",
          "The cell that holds the formula of the result. It is followed through other cells back to"
              + " the inputs.",
          Kinds.reference());

  static final Parameter<CellBlock> INPUTS =
      Parameter.required(
          "inputs", "The cells that hold the measured values, as one range.", Kinds.reference());

  static final Parameter<List<OptionalDouble>> UNCERTAINTIES =
      Parameter.required(
          "uncertainties",
          "The uncertainty of each input, in the order and the unit of the inputs: all half-widths or"
              + " all standard uncertainties.",
          Kinds.column(Kinds.notNegative()));

  static final Parameter<Value.Table> CORRELATIONS =
      Parameter.optional(
          "correlations",
          "Correlation coefficients of the inputs, as a square table with the inputs in order; only"
              + " for quadrature. None if left out.",
          Kinds.table());

  static final List<Parameter<?>> ALL =
      List.of(RESULT, INPUTS, UNCERTAINTIES, CommonParameters.COMBINE, CORRELATIONS);

  static final String FORMULA =
      "contribution = |c| u with the sensitivity coefficient c = the exact partial derivative of the"
          + " result along the input; straight: u(result) = sum(|c| u); quadrature: u(result)² ="
          + " sum((c u)²); with correlations r: u(result)² = sum over i and j of r(i,j) c(i) u(i)"
          + " c(j) u(j). An input that is used twice counts once, with its whole derivative.";

  static final String SOURCE =
      "quadrature: JCGM 100:2008, 5.1.2; correlations: 5.2.2; straight: common practice, no source";

  /** A wheel's rim, invented: mass in kg and radius in m, their half-widths, and the inertia. */
  static final List<List<Object>> HOOP =
      List.of(List.of(0.42, 0.005), List.of(0.311, 0.011), List.of("=A1*A2^2", ""));

  private static final Kind<Double> COEFFICIENT =
      Kinds.numberThat(Message.of("allowed.coefficient"), number -> Math.abs(number) <= 1);

  private CarryParameters() {}

  /**
   * The correlation coefficients between those inputs that count, if correlations are given.
   *
   * @param places which of the cells count
   * @param cells number of cells, blank ones included
   */
  static Optional<double[][]> coefficients(Arguments arguments, List<Integer> places, int cells) {
    Optional<Value.Table> table = arguments.find(CORRELATIONS);
    if (table.isPresent() && arguments.get(CommonParameters.COMBINE) != Combine.QUADRATURE) {
      throw ArgumentException.of("correlations.straight");
    }
    return table.map(coefficients -> square(coefficients, places, cells));
  }

  /** The same where all is combined in quadrature. */
  static Optional<double[][]> correlations(
      Parameter<Value.Table> parameter, Arguments arguments, List<Integer> places, int cells) {
    return arguments.find(parameter).map(table -> square(table, places, cells));
  }

  private static double[][] square(Value.Table table, List<Integer> places, int cells) {
    if (table.height() != cells || table.width() != cells) {
      throw ArgumentException.notAllowed(
          CORRELATIONS.name(), Argument.inWords(table), Message.of("allowed.square", cells));
    }
    Argument argument = new Argument(CORRELATIONS.name(), table, CORRELATIONS.allowed());
    double[][] square = new double[places.size()][places.size()];
    for (int row = 0; row < square.length; row++) {
      for (int column = 0; column < square.length; column++) {
        square[row][column] = argument.cell(places.get(row), places.get(column), COEFFICIENT);
      }
    }
    return square;
  }

  /** The places at which a value and its uncertainty stand; both may be blank together. */
  static List<Integer> places(
      String name, List<OptionalDouble> values, List<OptionalDouble> uncertainties) {
    if (values.size() != uncertainties.size()) {
      throw ArgumentException.of(
          "cells.unequal",
          UNCERTAINTIES.name(),
          Message.counted("cells", uncertainties.size()),
          name,
          values.size());
    }
    List<Integer> places = new ArrayList<>();
    for (int place = 0; place < values.size(); place++) {
      boolean measured = values.get(place).isPresent();
      if (measured != uncertainties.get(place).isPresent()) {
        throw ArgumentException.of(
            "inputs.one.blank",
            measured ? UNCERTAINTIES.name() : name,
            place + 1,
            measured ? name : UNCERTAINTIES.name());
      }
      if (measured) {
        places.add(place);
      }
    }
    if (places.isEmpty()) {
      throw ArgumentException.notAllowed(
          name, Message.of("found.blank"), Message.of("allowed.one.number"));
    }
    return places;
  }
}
