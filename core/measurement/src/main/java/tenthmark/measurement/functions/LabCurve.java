package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
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
import tenthmark.measurement.curve.Curve;
import tenthmark.measurement.curve.Curve.Estimate;
import tenthmark.measurement.curve.CurveFit;
import tenthmark.measurement.curve.Guess;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.formula.Model;
import tenthmark.measurement.formula.NamedModel;
import tenthmark.measurement.line.Point;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** LAB_CURVE: a curve of any model fitted to points. */
@AutoService(WorksheetFunction.class)
public final class LabCurve implements WorksheetFunction {

  private static final String VARIABLE = "x";

  private static final Parameter<String> MODEL =
      Parameter.required(
          "model",
          "A text with x and the parameters' names, such as a*EXP(-b*x)+c. As in a cell,"
              + " -x^2 is (-x)^2: write -(x^2).",
          Kinds.text());

  private static final Parameter<List<OptionalDouble>> UY =
      Parameter.blankable(
          "uy",
          "Standard uncertainty of each y, or one for all; if it is empty between the"
              + " semicolons, the scatter gives it.",
          Kinds.column(Kinds.positive()));

  private static final Parameter<List<Guess>> START =
      Parameter.required(
          "start",
          "Two columns, one row for each parameter: its name and a value to start from. Blank rows"
              + " are skipped.",
          new Kind<>(Kind.Form.RANGE, Message.of("allowed.guesses"), LabCurve::guessesIn));

  private static final Kind<String> NAME = Kinds.text();
  private static final Kind<Double> GUESS = Kinds.number();

  private static final Declaration DECLARATION =
      new Declaration(
          "CURVE",
          Family.LINES,
          FunctionRole.FIT,
          ResultKind.TABLE,
          "Fits a curve of your own formula to points and gives its parameters with their"
              + " uncertainties.",
          "When theory gives a formula that no straight line can stand for.",
          List.of(MODEL, LineParameters.X, LineParameters.Y, UY, START),
          "The sum of (y - curve)² is least, or with uy the sum of ((y - curve)/uy)²; the least"
              + " near the starting values, found by Levenberg and Marquardt's method with exact"
              + " derivatives. Uncertainties: roots of the diagonal of the inverse of J'J, where J"
              + " holds the curve's derivatives along the parameters; without uy times the scatter"
              + " about the curve, with uy over uy and whatever the scatter. One row for each"
              + " parameter (name, value, uncertainty), then chi-squared, degrees of freedom (n"
              + " less parameters) and the residual standard deviation sqrt(sum((y -"
              + " curve)²)/degrees of freedom).",
          "Levenberg, Q. Appl. Math. 2 (1944) 164; Marquardt, J. SIAM 11 (1963) 431; uncertainties:"
              + " common practice in statistics, checked against NIST StRD",
          Example.of(
              "=LAB_CURVE(\"a*EXP(-b*x)\";A1:A5;B1:B5;;C1:D2)",
              List.of(
                  List.of(0.0, 12.1, "a", 10.0),
                  List.of(5.0, 8.2, "b", 0.1),
                  List.of(10.0, 5.4, "", ""),
                  List.of(15.0, 3.7, "", ""),
                  List.of(20.0, 2.4, "", "")),
              "a"));

  private final Formulas formulas = new Formulas();

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    String text = arguments.get(MODEL);
    List<Guess> start = arguments.get(START);
    Optional<List<OptionalDouble>> uy = arguments.find(UY);
    Model model = model(text, start);
    List<Point> points =
        LineParameters.points(
            arguments, LineParameters.NONE, uy.orElse(LineParameters.NONE), start.size() + 1);
    return table(
        LineParameters.fitted(
            () ->
                uy.isPresent()
                    ? CurveFit.byUncertainties(model, points, start)
                    : CurveFit.byScatter(model, points, start)),
        arguments.sentences());
  }

  private Model model(String text, List<Guess> start) {
    List<String> names =
        Stream.concat(Stream.of(VARIABLE), start.stream().map(Guess::name)).toList();
    Model model = CarryTask.explained(() -> new NamedModel(formulas.withNames(text), names));
    for (int i = 1; i < names.size(); i++) {
      if (!model.reaches(i)) {
        throw ArgumentException.of("model.unused", names.get(i));
      }
    }
    return model;
  }

  private static Value table(Curve curve, Sentences sentences) {
    List<List<Value>> rows = new ArrayList<>();
    for (Estimate estimate : curve.estimates()) {
      rows.add(row(estimate.name(), Value.of(estimate.value()), Value.of(estimate.uncertainty())));
    }
    rows.add(
        row(
            sentences.say("label.chi.squared"),
            LabLine.shown(curve.chiSquared(), "label.needs.uy", sentences),
            Value.BLANK));
    rows.add(row(sentences.say("label.freedom"), Value.of(curve.freedom()), Value.BLANK));
    rows.add(
        row(
            sentences.say("label.residual.standard.deviation"),
            Value.of(curve.residualDeviation()),
            Value.BLANK));
    return new Value.Table(rows);
  }

  private static List<Value> row(String label, Value value, Value uncertainty) {
    return List.of(Value.of(label), value, uncertainty);
  }

  private static List<Guess> guessesIn(Argument argument) {
    Value.Table table = argument.table();
    if (table.width() != 2) {
      throw argument.refused();
    }
    List<Guess> guesses = new ArrayList<>();
    for (int row = 0; row < table.height(); row++) {
      if (!table.rows().get(row).stream().allMatch(Value.Blank.class::isInstance)) {
        guesses.add(new Guess(argument.cell(row, 0, NAME).strip(), argument.cell(row, 1, GUESS)));
      }
    }
    if (guesses.isEmpty()) {
      throw argument.refusedAs(Message.of("found.blank.rows"));
    }
    return guesses;
  }
}
