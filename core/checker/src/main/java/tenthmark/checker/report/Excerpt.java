package tenthmark.checker.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.measurement.wording.Message;

/**
 * The findings of a file that a person is shown, who reads no ten thousand of one kind: of each
 * rule the first ones. What programs read, and what is counted, are all of them.
 *
 * @param findings those shown, in their order
 * @param more how many further ones each rule has
 */
public record Excerpt(List<Finding> findings, Map<RuleDeclaration, Integer> more) {

  /** How many of one rule are shown. */
  public static final int MOST = 100;

  static Excerpt of(List<Finding> all) {
    Map<RuleDeclaration, Integer> counts = new LinkedHashMap<>();
    List<Finding> shown = new ArrayList<>();
    for (Finding finding : all) {
      if (counts.merge(finding.rule(), 1, Integer::sum) <= MOST) {
        shown.add(finding);
      }
    }
    counts.values().removeIf(count -> count <= MOST);
    counts.replaceAll((rule, count) -> count - MOST);
    return new Excerpt(shown, counts);
  }

  /** A sentence for each rule that has more. */
  public List<Message> rest() {
    return more.entrySet().stream()
        .map(rule -> Message.counted("report.more", rule.getValue(), rule.getKey().id()))
        .toList();
  }
}
