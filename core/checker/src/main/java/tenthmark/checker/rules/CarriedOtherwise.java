package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Set;
import tenthmark.checker.carried.Way;
import tenthmark.checker.course.Course;
import tenthmark.measurement.wording.Message;

/** A carried uncertainty that is right, but combined in another way than the course's. */
@AutoService(Rule.class)
public final class CarriedOtherwise implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("carried-otherwise", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    boolean anothersConcern = inspection.course().combineRequired();
    if (anothersConcern || inspection.course().equals(Course.PLAIN)) {
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
    List<Message> ways = comparison.fitting().stream().map(Way::inWords).toList();
    return DECLARATION.finding(
        comparison.claim().place(),
        Message.of(
            "carried-otherwise.found",
            comparison.claim().name(),
            Numbers.show(comparison.claim().uncertainty()),
            Message.joined("list.and", ways)),
        Message.of("carried-otherwise.expected", own.inWords(), comparison.expected()));
  }
}
