package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A stored result that recalculation does not give. */
@AutoService(Rule.class)
public final class ResultStale implements Rule {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

  private static final Value UNKNOWN_NAME = new Value.Fault("#NAME?");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("result-stale", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    boolean withoutExtension = SavedWithoutExtension.isSo(inspection);
    Set<Cell> stale =
        inspection
            .formulas()
            .filter(
                cell -> !withoutExtension || !inspection.evaluation().dependsOnLab(cell.address()))
            .filter(cell -> isStale(cell, inspection.evaluation()))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    if (stale.isEmpty()) {
      return List.of();
    }
    Set<CellAddress> places = stale.stream().map(Cell::address).collect(Collectors.toSet());
    Set<CellAddress> explained = NumberAsText.explained(inspection);
    return stale.stream()
        .filter(cell -> !explained.contains(cell.address()))
        .filter(cell -> !inspection.evaluation().dependsOn(cell.address(), explained))
        .filter(cell -> isFirst(cell, places, inspection.evaluation()))
        .map(cell -> finding(cell, inspection.evaluation()))
        .toList();
  }

  /** Whether the stored result is another than the one calculated. */
  static boolean isStale(Cell cell, Evaluation evaluation) {
    Optional<Value> stored = Evaluation.stored(cell.content());
    return stored.isPresent()
        && !stored.get().equals(UNKNOWN_NAME)
        && !evaluation.changesByItself(cell.address())
        && evaluation.at(cell.address()) instanceof Outcome.Known known
        && !(known.value() instanceof Value.Fault)
        && !same(stored.get(), known.value())
        && !evaluation.followsError(cell)
        && !explainsACell(cell, evaluation);
  }

  /** An explanation says what the student's office shows, which has errors under other names. */
  private static boolean explainsACell(Cell cell, Evaluation evaluation) {
    return evaluation.calls(cell).stream().anyMatch(call -> call.function().equals("LAB_WHY"));
  }

  private static boolean same(Value stored, Value calculated) {
    if (stored instanceof Value.Numeric one && calculated instanceof Value.Numeric other) {
      return Numbers.same(one.number(), other.number())
          || Math.abs(one.number() - other.number()) < 1e-12;
    }
    return stored.equals(calculated)
        || stored instanceof Value.Text one
            && calculated instanceof Value.Text other
            && withPoints(one.text()).equals(withPoints(other.text()));
  }

  /** Calc joins a number to a text with the decimal sign of the student's office. */
  private static String withPoints(String text) {
    return DECIMAL_COMMA.matcher(text).replaceAll(".");
  }

  /** Cells that only follow another stale cell are not reported again. */
  private static boolean isFirst(Cell cell, Set<CellAddress> stale, Evaluation evaluation) {
    return evaluation.precedents(cell).stream().map(Cell::address).noneMatch(stale::contains);
  }

  private static Finding finding(Cell cell, Evaluation evaluation) {
    Value calculated = ((Outcome.Known) evaluation.at(cell.address())).value();
    return DECLARATION.finding(
        cell.address(),
        Message.of(
            "result-stale.found", Values.show(Evaluation.stored(cell.content()).orElseThrow())),
        Message.of(
            "found.formula", Values.show(calculated), ((Content.Formula) cell.content()).shown()));
  }
}
