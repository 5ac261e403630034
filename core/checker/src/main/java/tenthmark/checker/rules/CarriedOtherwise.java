package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tenthmark.checker.carried.Way;
import tenthmark.checker.course.Course;

/** A carried uncertainty that is right, but combined in another way than the course's. */
@AutoService(Rule.class)
public final class CarriedOtherwise implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "carried-otherwise",
          Severity.NOTE,
          "A carried uncertainty that is right in another way of combining than the course's; "
              + "found only with a profile, which says what the course's way is.",
          "Uncertainties that are combined in different ways cannot be compared.",
          "Nothing need be done; to combine in the course's way, name it in =LAB_CARRY(...).",
          "The course combines straight, and a sum of 30 mm +/- 0.3 mm and 40 mm +/- 0.4 mm is "
              + "stated with 0.5 mm, which is the quadrature; straight it is 0.7 mm.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    if (inspection.course().equals(Course.PLAIN)) {
      return List.of();
    }
    Way own = Way.of(inspection.convention().combine());
    return inspection
        .carried()
        .filter(comparison -> isOtherwise(comparison.fitting(), own))
        .map(comparison -> finding(comparison, own))
        .toList();
  }

  private static boolean isOtherwise(Set<Way> fitting, Way own) {
    return !fitting.isEmpty() && !fitting.contains(own);
  }

  private static Finding finding(CarriedComparison comparison, Way own) {
    String ways =
        comparison.fitting().stream().map(Way::words).collect(Collectors.joining(" and "));
    return DECLARATION.finding(
        comparison.claim().place(),
        "the uncertainty of "
            + comparison.claim().name()
            + ", "
            + Numbers.show(comparison.claim().uncertainty())
            + ", fits "
            + ways,
        "nothing: this is no fault; the course combines "
            + own.words()
            + ": "
            + comparison.expected());
  }
}
