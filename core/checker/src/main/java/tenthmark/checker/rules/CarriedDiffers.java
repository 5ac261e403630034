package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;

/** An uncertainty of a calculated value that does not follow from the recorded uncertainties. */
@AutoService(Rule.class)
public final class CarriedDiffers implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "carried-differs",
          Severity.ERROR,
          "A calculated value whose uncertainty is not what its own formula makes of the recorded "
              + "uncertainties, be it straight, in quadrature or as half the range between the "
              + "extremes.",
          "A result is as uncertain as the measurements that it is calculated from, no more and no "
              + "less.",
          "Let =LAB_CARRY(result; inputs; uncertainties) carry the uncertainties of all inputs, or "
              + "find the input that is left out or counted wrongly.",
          "A wheel's circumference =PI()*C4 of a diameter 622 mm +/- 0.5 mm is stated with 0.5 mm: "
              + "pi times 0.5 mm makes 1.6 mm.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection
        .carried()
        .filter(CarriedComparison::differs)
        .map(
            comparison ->
                DECLARATION.finding(
                    comparison.claim().place(),
                    "the uncertainty of "
                        + comparison.claim().name()
                        + " is "
                        + Numbers.show(comparison.claim().uncertainty()),
                    comparison.expected()))
        .toList();
  }
}
