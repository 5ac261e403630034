package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.carried.Way;
import tenthmark.checker.record.Field;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/**
 * An uncertainty that is right in another way of combining than the one that the course requires.
 */
@AutoService(Rule.class)
public final class CombinedOtherwise implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("combined-otherwise", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    if (!inspection.course().combineRequired()) {
      return List.of();
    }
    Combine required = inspection.convention().combine();
    return Stream.concat(totals(inspection, required), carried(inspection, required)).toList();
  }

  private static Stream<Finding> totals(Inspection inspection, Combine required) {
    return inspection.records().stream()
        .flatMap(measurement -> TotalComparison.of(measurement, inspection).stream())
        .filter(total -> isOtherwise(total.fitting(), required))
        .map(
            total ->
                DECLARATION.finding(
                    total.measurement().placeOrValue(Field.UNCERTAINTY),
                    found(
                        total.measurement().name(),
                        total.total(),
                        total.fitting().stream().map(Way::of).collect(Collectors.toSet())),
                    expected(required, total.expected())));
  }

  private static Stream<Finding> carried(Inspection inspection, Combine required) {
    return inspection
        .carried()
        .filter(carried -> isOtherwise(carried.fitting(), Way.of(required)))
        .map(
            carried ->
                DECLARATION.finding(
                    carried.claim().place(),
                    found(carried.claim().name(), carried.claim().uncertainty(), carried.fitting()),
                    expected(required, carried.expected())));
  }

  private static <T> boolean isOtherwise(Set<T> fitting, T required) {
    return !fitting.isEmpty() && !fitting.contains(required);
  }

  private static Message found(Message name, double uncertainty, Set<Way> fitting) {
    List<Message> ways = fitting.stream().sorted().map(Way::inWords).toList();
    return Message.of(
        "combined-otherwise.found",
        name,
        Numbers.show(uncertainty),
        Message.joined("list.and", ways));
  }

  private static Message expected(Combine required, Message sizes) {
    return Message.of("combined-otherwise.expected", Way.of(required).inWords(), sizes);
  }
}
