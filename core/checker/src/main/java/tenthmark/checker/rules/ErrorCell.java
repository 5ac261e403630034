package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.catalogue.Value;

/** A cell in error. */
@AutoService(Rule.class)
public final class ErrorCell implements Rule {

  private static final Map<String, String> MEANINGS =
      Map.of(
          "#DIV/0!", "a number that does not divide by zero or by an empty cell",
          "#VALUE!", "arguments of the right kind, such as numbers where numbers belong",
          "#REF!", "references to cells that exist",
          "#NAME?", "names and functions that exist",
          "#NUM!", "a number that can be computed and is not too large",
          "#N/A", "a value that can be found",
          "~CIRCULAR~REF~", "a formula that does not lead back to itself");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "error-cell",
          Severity.ERROR,
          "A cell whose formula gives an error, or a LAB function that refuses an argument.",
          "Nothing that depends on the cell has a meaning.",
          "Correct the argument that the message names.",
          "=LAB_READING(0) is refused because a division is greater than 0; "
              + "=LAB_READING(0.5) is right for marks half a millimetre apart.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    Evaluation evaluation = inspection.evaluation();
    return inspection
        .sheets()
        .flatMap(Sheet::cells)
        .filter(cell -> problem(cell, evaluation).isPresent())
        .filter(cell -> isFirst(cell, evaluation))
        .filter(cell -> !isMeant(cell) && !isInsideArray(cell))
        .filter(cell -> !NumberAsText.explains(cell, evaluation))
        .map(cell -> finding(cell, evaluation))
        .toList();
  }

  /** The error's name, or the sentence that stands in the cell instead of a result. */
  private static Optional<String> problem(Cell cell, Evaluation evaluation) {
    if (!(evaluation.at(cell.address()) instanceof Outcome.Known known)) {
      return Optional.empty();
    }
    if (known.value() instanceof Value.Fault fault) {
      return Optional.of(fault.reason());
    }
    return evaluation
        .sentence(cell.address())
        .filter(sentence -> known.value().equals(new Value.Text(sentence)));
  }

  private static boolean isFirst(Cell cell, Evaluation evaluation) {
    return evaluation.precedents(cell).stream()
        .filter(precedent -> !precedent.equals(cell))
        .noneMatch(precedent -> problem(precedent, evaluation).isPresent());
  }

  /** NA() is typed to leave a point out of a chart. */
  private static boolean isMeant(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && formula.text().equalsIgnoreCase("NA()");
  }

  /**
   * Only the first cell of an array formula speaks for it; the others may lie beyond its result.
   */
  private static boolean isInsideArray(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && formula.array().filter(area -> !area.first().equals(cell.address())).isPresent();
  }

  private static Finding finding(Cell cell, Evaluation evaluation) {
    String error = problem(cell, evaluation).orElseThrow();
    String formula =
        cell.content() instanceof Content.Formula found ? " (=" + found.text() + ")" : "";
    Optional<String> sentence = evaluation.sentence(cell.address());
    return DECLARATION.finding(
        cell.address(),
        sentence.isPresent() ? sentence.get() + formula : error + formula,
        sentence.isPresent()
            ? "arguments that the function allows"
            : MEANINGS.getOrDefault(error, "a value"));
  }
}
