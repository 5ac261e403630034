package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.evaluation.StoredResults;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A stored result that recalculation does not give. */
@AutoService(Rule.class)
public final class ResultStale implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("result-stale", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    StoredResults stored = new StoredResults(inspection.evaluation());
    Set<Cell> stale =
        inspection
            .formulas()
            .filter(stored::isStale)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Set<CellAddress> places = stale.stream().map(Cell::address).collect(Collectors.toSet());
    return stale.stream()
        .filter(cell -> isFirst(cell, places, inspection.evaluation()))
        .map(cell -> finding(cell, inspection.evaluation()))
        .toList();
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
