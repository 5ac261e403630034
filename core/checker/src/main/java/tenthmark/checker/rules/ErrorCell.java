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
import tenthmark.measurement.explanation.Unknown;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/** A cell in error. */
@AutoService(Rule.class)
public final class ErrorCell implements Rule {

  private static final String NO_SUCH_NAME = "#NAME?";

  private static final Map<String, String> MEANINGS =
      Map.of(
          "#DIV/0!",
          "error-cell.division",
          "#VALUE!",
          "error-cell.kind",
          "#REF!",
          "error-cell.reference",
          NO_SUCH_NAME,
          "error-cell.name",
          "#NUM!",
          "error-cell.number",
          "#N/A",
          "error-cell.missing",
          "~CIRCULAR~REF~",
          "error-cell.circle");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("error-cell", Severity.ERROR);

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
        .map(cell -> finding(cell, inspection))
        .toList();
  }

  /** The error's name, or the sentence that stands in the cell instead of a result. */
  private static Optional<Message> problem(Cell cell, Evaluation evaluation) {
    if (!(evaluation.at(cell.address()) instanceof Outcome.Known known)) {
      return evaluation.isMisspelt(cell)
          ? Optional.of(Message.verbatim(NO_SUCH_NAME))
          : Optional.empty();
    }
    if (known.value() instanceof Value.Fault fault) {
      return Optional.of(Message.verbatim(fault.reason()));
    }
    return evaluation
        .sentence(cell.address())
        .filter(sentence -> known.value().equals(new Value.Text(sentence.toString())));
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

  private static Finding finding(Cell cell, Inspection inspection) {
    Evaluation evaluation = inspection.evaluation();
    Message error = problem(cell, evaluation).orElseThrow();
    Optional<Message> sentence = evaluation.sentence(cell.address());
    return DECLARATION.finding(
        cell.address(),
        cell.content() instanceof Content.Formula formula
            ? Message.of("found.formula", sentence.orElse(error), formula.shown())
            : sentence.orElse(error),
        sentence.isPresent()
            ? Message.of("error-cell.arguments")
            : cause(cell, error.toString(), inspection)
                .orElseGet(
                    () -> Message.of(MEANINGS.getOrDefault(error.toString(), "error-cell.other"))));
  }

  /** The cells behind an error that hold no number, or the word that nobody knows. */
  private static Optional<Message> cause(Cell cell, String error, Inspection inspection) {
    return switch (error) {
      case "#VALUE!" -> text(cell, inspection.evaluation());
      case "#DIV/0!" -> blank(cell, inspection);
      case NO_SUCH_NAME -> unknown(cell, inspection.evaluation());
      default -> Optional.empty();
    };
  }

  private static Optional<Message> unknown(Cell cell, Evaluation evaluation) {
    return evaluation.unknown(cell.address()).map(ErrorCell::expected);
  }

  private static Message expected(Unknown unknown) {
    if (!unknown.isFunction()) {
      return Message.of("error-cell.name.text", unknown.word());
    }
    return unknown
        .meant()
        .map(meant -> Message.of("error-cell.name.meant", meant, unknown.word()))
        .orElseGet(() -> Message.of("error-cell.name.function", unknown.word()));
  }

  private static Optional<Message> text(Cell cell, Evaluation evaluation) {
    for (Cell precedent : evaluation.precedents(cell)) {
      if (evaluation.at(precedent.address()) instanceof Outcome.Known known
          && known.value() instanceof Value.Text text) {
        return Optional.of(
            Message.of("error-cell.text", precedent.address().place(), Values.show(text)));
      }
    }
    return Optional.empty();
  }

  private static Optional<Message> blank(Cell cell, Inspection inspection) {
    return inspection.evaluation().references(cell).stream()
        .filter(range -> isBlank(range, inspection))
        .findFirst()
        .map(range -> Message.of("error-cell.blank", shown(range, cell)));
  }

  private static String shown(CellRange range, Cell from) {
    return range.sheet().equalsIgnoreCase(from.address().sheet())
        ? range.place()
        : range.sheet() + "." + range.place();
  }

  private static boolean isBlank(CellRange range, Inspection inspection) {
    return inspection.workbook().sheet(range.sheet()).stream()
        .flatMap(sheet -> sheet.cells(range))
        .map(cell -> inspection.evaluation().at(cell.address()))
        .allMatch(
            outcome ->
                outcome instanceof Outcome.Known known && known.value() instanceof Value.Blank);
  }
}
