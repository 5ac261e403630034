package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Breakdown;
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
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.formula.NamedModel;
import tenthmark.measurement.wording.Message;

/** LAB_CARRYTEXT: the uncertainty of a result whose formula is given as a text with names. */
@AutoService(WorksheetFunction.class)
public final class LabCarryText implements WorksheetFunction {

  private static final Parameter<String> FORMULA =
      Parameter.required(
          "formula",
          "A text with names, such as 4*PI()^2*L/T^2: operators as in a cell, English"
              + " function names, decimal points.",
          Kinds.text());

  private static final Parameter<List<Optional<String>>> NAMES =
      Parameter.required(
          "names",
          "The name of each input as the formula writes it; capital and small letters differ.",
          new Kind<>(Kind.Form.RANGE, Message.of("allowed.names"), LabCarryText::namesIn));

  private static final Parameter<List<OptionalDouble>> VALUES =
      Parameter.required(
          "values", "The measured value of each input.", Kinds.column(Kinds.number()));

  private static final Declaration DECLARATION =
      new Declaration(
          "CARRYTEXT",
          Family.CARRYING,
          FunctionRole.CARRIED,
          ResultKind.NUMBER,
          "Gives the uncertainty of a result whose formula is given as a text with names.",
          "When the formula stands in no cell, or to try a variant of it.",
          List.of(
              FORMULA,
              NAMES,
              VALUES,
              CarryParameters.UNCERTAINTIES,
              CommonParameters.COMBINE,
              CarryParameters.CORRELATIONS),
          CarryParameters.FORMULA,
          CarryParameters.SOURCE,
          Example.of(
              "=LAB_CARRYTEXT(\"m*r^2\";A1:A2;B1:B2;C1:C2)",
              List.of(List.of("m", 0.42, 0.005), List.of("r", 0.311, 0.011)),
              "0.00336"));

  private static final Kind<String> NAME = Kinds.text();

  private final Formulas formulas = new Formulas();

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    CarryTask task = task(arguments);
    return Value.of(task.carried().uncertainty(task.combination(arguments)));
  }

  @Override
  public Optional<Breakdown> breakdown(Arguments arguments) {
    return Optional.of(CarriedTable.breakdown(task(arguments), arguments, Optional.empty()));
  }

  private CarryTask task(Arguments arguments) {
    List<Optional<String>> names = arguments.get(NAMES);
    List<OptionalDouble> values = arguments.get(VALUES);
    List<OptionalDouble> uncertainties = arguments.get(CarryParameters.UNCERTAINTIES);
    List<Integer> places = CarryParameters.places(VALUES.name(), values, uncertainties);
    List<String> labels = labels(names, values, places);
    Model model =
        CarryTask.explained(
            () -> new NamedModel(formulas.withNames(arguments.get(FORMULA)), labels));
    return CarryTask.of(model, labels, places, values, uncertainties);
  }

  private static List<String> labels(
      List<Optional<String>> names, List<OptionalDouble> values, List<Integer> places) {
    if (names.size() != values.size()) {
      throw ArgumentException.of(
          "cells.unequal",
          NAMES.name(),
          Message.counted("cells", names.size()),
          VALUES.name(),
          values.size());
    }
    List<String> labels = new ArrayList<>();
    for (int place = 0; place < names.size(); place++) {
      if (places.contains(place) != names.get(place).isPresent()) {
        throw ArgumentException.of(
            "names.one.blank",
            names.get(place).isPresent() ? VALUES.name() : NAMES.name(),
            place + 1);
      }
      names.get(place).ifPresent(labels::add);
    }
    return labels;
  }

  private static List<Optional<String>> namesIn(Argument argument) {
    Value.Table table = argument.table();
    List<Optional<String>> names = new ArrayList<>();
    for (int row = 0; row < table.height(); row++) {
      for (int column = 0; column < table.width(); column++) {
        names.add(
            table.rows().get(row).get(column) instanceof Value.Blank
                ? Optional.empty()
                : Optional.of(argument.cell(row, column, NAME).strip()));
      }
    }
    return names;
  }
}
