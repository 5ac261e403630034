package tenthmark.measurement.explanation;

import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.wording.ErrorName;
import tenthmark.measurement.wording.Sentences;

/** Explains what the cells of a document do and why they have no value. */
public final class Explainer {

  private final Catalogue catalogue;
  private final Formulas formulas = new Formulas();

  /** An explainer that knows the functions of a catalogue. */
  public Explainer(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The explanation of a cell in one text: what is wrong, or that nothing is and what it does. */
  public String why(Cells cells, CellAddress cell, Sentences sentences) {
    Explanation explanation = explain(cells, cell, sentences);
    return explanation
        .problem()
        .map(Explanation.Problem::sentence)
        .orElseGet(() -> sentences.say("why.none", String.join(" ", explanation.words())));
  }

  /** The explanation of a cell. */
  public Explanation explain(Cells cells, CellAddress cell, Sentences sentences) {
    CellContent content = cells.at(cell);
    return content instanceof CellContent.Formula formula
        ? new FormulaCell(catalogue, formulas, cells, sentences, cell, formula.text()).explanation()
        : typedIn(content, cell.place(), sentences);
  }

  /**
   * The table that the formula of a cell gives, if a LAB function makes it one of several cells.
   */
  public Optional<TableSize> table(Cells cells, CellAddress cell, Sentences sentences) {
    return cells.at(cell) instanceof CellContent.Formula formula
        ? new FormulaCell(catalogue, formulas, cells, sentences, cell, formula.text()).table()
        : Optional.empty();
  }

  private static Explanation typedIn(CellContent content, String cell, Sentences sentences) {
    if (content instanceof CellContent.Number number) {
      return typedIn(
          cell, sentences.say("cell.number", cell, Words.number(number.value(), sentences)));
    }
    if (content instanceof CellContent.Text text) {
      Optional<Cause> cause = Cause.ofTextualNumber(cell, text.text(), sentences);
      return Explanation.typedIn(
          cell,
          List.of(sentences.say("cell.text", cell, text.text())),
          cause.map(known -> known.problem(sentences)));
    }
    if (content instanceof CellContent.Fault fault) {
      String error = sentences.say(new ErrorName(fault.name()).shown());
      Cause cause = Cause.of(Cause.Kind.CELL, sentences.say("cell.fault", cell, error));
      return Explanation.typedIn(cell, List.of(), Optional.of(cause.problem(sentences)));
    }
    return typedIn(cell, sentences.say("cell.empty", cell));
  }

  private static Explanation typedIn(String cell, String sentence) {
    return Explanation.typedIn(cell, List.of(sentence), Optional.empty());
  }
}
