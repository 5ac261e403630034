package tenthmark.measurement.functions;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.explanation.Explainer;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.wording.Message;

/** LAB_WHY: why a cell shows an error, and otherwise what its formula does. */
@AutoService(WorksheetFunction.class)
public final class LabWhy implements WorksheetFunction {

  private static final Parameter<CellBlock> CELL =
      Parameter.required("cell", "The cell to explain.", Kinds.reference());

  private static final Declaration DECLARATION =
      new Declaration(
          "WHY",
          Family.EXPLAINING,
          FunctionRole.EXPLANATION,
          ResultKind.TEXT,
          "Says why a cell shows an error; where it shows none, says what its formula does.",
          "In any free cell, when another cell shows an error that you do not understand.",
          List.of(CELL),
          "the first part of the formula that has no value although all its own parts have one;"
              + " followed into the cells that it refers to",
          Declaration.NO_SOURCE,
          Example.of(
              "=LAB_WHY(B3)",
              List.of(
                  List.of("mass / g", 12.5),
                  List.of("volume / cm³", ""),
                  List.of("density / (g/cm³)", "=B1/B2")),
              "Division by zero: B2 (volume / cm³) is blank, which counts as 0."));

  /** The functions are looked for at the first call: this one is among them. */
  private static final class Known {
    private static final Explainer EXPLAINER = new Explainer(Catalogue.load());
  }

  @Override
  public Declaration declaration() {
    return DECLARATION;
  }

  @Override
  public Value evaluate(Arguments arguments) {
    CellBlock cell = arguments.get(CELL);
    if (cell.range().width() != 1 || cell.range().height() != 1) {
      throw ArgumentException.notAllowed(
          CELL.name(), Argument.inWords(cell.range()), Message.of("allowed.cell"));
    }
    return Value.of(Known.EXPLAINER.why(cell.cells(), cell.range().first(), arguments.sentences()));
  }
}
