package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.carried.Claim;
import tenthmark.checker.carried.Way;
import tenthmark.measurement.wording.Message;

/** An uncertainty of a calculated value that does not follow from the recorded uncertainties. */
@AutoService(Rule.class)
public final class CarriedDiffers implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("carried-differs", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public boolean restsOnTables() {
    return true;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection
        .carried()
        .filter(CarriedComparison::differs)
        .map(
            comparison ->
                DECLARATION
                    .finding(
                        comparison.claim().place(),
                        Message.of(
                            "found.uncertainty",
                            comparison.claim().name(),
                            Numbers.show(comparison.claim().uncertainty())),
                        comparison.expected())
                    .mendedBy(mends(comparison, inspection)))
        .toList();
  }

  /** Nothing where the uncertainty stands in a text or in another unit than the value. */
  private static List<Mend> mends(CarriedComparison comparison, Inspection inspection) {
    Claim claim = comparison.claim();
    return inspection
        .evaluation()
        .number(claim.place())
        .filter(number -> number == claim.uncertainty())
        .flatMap(number -> comparison.size(Way.of(inspection.convention().combine())))
        .map(size -> Mend.number(claim.place(), size))
        .stream()
        .toList();
  }
}
