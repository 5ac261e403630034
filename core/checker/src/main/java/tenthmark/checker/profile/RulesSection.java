package tenthmark.checker.profile;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.rules.Grading;
import tenthmark.checker.rules.RulePolicy;
import tenthmark.checker.rules.Severity;

/** What a course makes of the rules: by rule id a severity or "none", and points. */
final class RulesSection {

  /** A severity, or none for a rule that is not applied. */
  private static final Map<String, Optional<Severity>> SEVERITIES = new LinkedHashMap<>();

  static {
    Words.of(Severity.values())
        .forEach((word, severity) -> SEVERITIES.put(word, Optional.of(severity)));
    SEVERITIES.put("none", Optional.empty());
  }

  private RulesSection() {}

  static Grading read(Section section, Set<String> ruleIds) {
    Map<String, RulePolicy> policies = new HashMap<>();
    for (String id : section.keys()) {
      if (!ruleIds.contains(id)) {
        section.keyProblem(id, unknown(id));
      }
      section.section(id).map(RulesSection::policy).ifPresent(policy -> policies.put(id, policy));
    }
    return new Grading(policies);
  }

  static String unknown(String id) {
    return "there is no rule " + id + "; the command rules prints them all";
  }

  private static RulePolicy policy(Section section) {
    Optional<Optional<Severity>> severity = section.choice("severity", SEVERITIES);
    double points = section.number("points", Range.NOT_NEGATIVE).orElse(0.0);
    section.close();
    return new RulePolicy(
        severity.isEmpty() || severity.get().isPresent(),
        severity.flatMap(chosen -> chosen),
        points);
  }
}
