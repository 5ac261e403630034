package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.carried.Claim;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A formula that the checker cannot calculate, which is no fault. */
@AutoService(Rule.class)
public final class NotCheckable implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("not-checkable", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    Map<CellAddress, Long> counts =
        inspection
            .formulas()
            .flatMap(cell -> uncheckable(cell, inspection).stream())
            .collect(Collectors.groupingBy(Outcome.NotCheckable::origin, Collectors.counting()));
    Stream<Finding> cells =
        inspection
            .formulas()
            .flatMap(
                cell ->
                    uncheckable(cell, inspection).stream()
                        .filter(outcome -> outcome.origin().equals(cell.address()))
                        .filter(outcome -> !inspection.evaluation().isMisspelt(cell))
                        .map(
                            outcome ->
                                finding(cell, outcome.reason(), counts.get(cell.address()) - 1)));
    return Stream.concat(cells, uncertainties(inspection)).toList();
  }

  /** The uncertainties of calculated values that cannot be compared with the recorded ones. */
  private static Stream<Finding> uncertainties(Inspection inspection) {
    Stream<Finding> notFollowed =
        inspection.derivations().stream()
            .filter(Derivation.NotFollowed.class::isInstance)
            .map(Derivation.NotFollowed.class::cast)
            .map(derivation -> finding(derivation.claim(), derivation.reason()));
    Stream<Finding> doubtful =
        inspection
            .carried()
            .filter(comparison -> comparison.fitting().isEmpty())
            .flatMap(
                comparison ->
                    comparison.doubt().stream().map(doubt -> finding(comparison.claim(), doubt)));
    return Stream.concat(notFollowed, doubtful);
  }

  private static Finding finding(Claim claim, Message reason) {
    return DECLARATION.finding(
        claim.place(),
        Message.of("not-checkable.uncertainty", claim.name(), reason),
        Message.of("no-fault"));
  }

  private static Optional<Outcome.NotCheckable> uncheckable(Cell cell, Inspection inspection) {
    return inspection.evaluation().at(cell.address()) instanceof Outcome.NotCheckable outcome
        ? Optional.of(outcome)
        : Optional.empty();
  }

  private static Finding finding(Cell cell, Message reason, long dependents) {
    return DECLARATION.finding(
        cell.address(),
        Message.of("found.formula", reason, ((Content.Formula) cell.content()).shown()),
        dependents == 0
            ? Message.of("no-fault")
            : Message.of("not-checkable.dependents", dependents));
  }
}
