package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.checker.carried.Claim;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;

/** A formula that the checker cannot calculate, which is no fault. */
@AutoService(Rule.class)
public final class NotCheckable implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "not-checkable",
          Severity.NOTE,
          "A formula that the checker cannot calculate or carry an uncertainty through, with the "
              + "reason.",
          "The rules leave out this cell and all that depends on it.",
          "Nothing need be done; look at the cell yourself.",
          "=LET(r; B4/2; PI()*r^2) is reported with the reason that the checker does not "
              + "know the function LET.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    Stream<Finding> cells =
        inspection
            .formulas()
            .filter(cell -> isOrigin(cell, inspection))
            .map(cell -> finding(cell, inspection));
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

  private static Finding finding(Claim claim, String reason) {
    return DECLARATION.finding(
        claim.place(),
        "the uncertainty of "
            + claim.name()
            + " cannot be compared with the recorded ones: "
            + reason,
        "nothing: this is no fault");
  }

  private static boolean isOrigin(Cell cell, Inspection inspection) {
    return inspection.evaluation().at(cell.address()) instanceof Outcome.NotCheckable unknown
        && unknown.origin().equals(cell.address());
  }

  private static Finding finding(Cell cell, Inspection inspection) {
    String reason = ((Outcome.NotCheckable) inspection.evaluation().at(cell.address())).reason();
    long dependents =
        inspection
                .formulas()
                .filter(
                    other ->
                        inspection.evaluation().at(other.address())
                                instanceof Outcome.NotCheckable found
                            && found.origin().equals(cell.address()))
                .count()
            - 1;
    return DECLARATION.finding(
        cell.address(),
        reason + " (=" + ((Content.Formula) cell.content()).text() + ")",
        "nothing: this is no fault"
            + (dependents == 0 ? "" : "; cells that depend on it and are left out: " + dependents));
  }
}
