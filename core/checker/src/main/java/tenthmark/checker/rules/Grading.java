package tenthmark.checker.rules;

import java.util.Map;

/**
 * What a course makes of the rules.
 *
 * @param policies by rule id; a rule that is left out stays as it is declared
 * @param limits to what all findings together cost
 */
public record Grading(Map<String, RulePolicy> policies, PointLimits limits) {

  /** Every rule as it is declared. */
  public static final Grading DECLARED = new Grading(Map.of());

  /** Copies the policies. */
  public Grading {
    policies = Map.copyOf(policies);
  }

  /** What the course makes of the rule with this id. */
  public RulePolicy policy(String rule) {
    return policies.getOrDefault(rule, RulePolicy.DECLARED);
  }

  /** Without limits to what findings cost together. */
  public Grading(Map<String, RulePolicy> policies) {
    this(policies, PointLimits.NONE);
  }

  /** The same policies within limits. */
  public Grading within(PointLimits most) {
    return new Grading(policies, most);
  }

  private RulePolicy policy(RuleDeclaration rule) {
    return policy(rule.id());
  }

  /** The rules that are applied. */
  public RuleCatalogue applied(RuleCatalogue rules) {
    return new RuleCatalogue(
        rules.rules().stream().filter(rule -> policy(rule.declaration()).applies()).toList());
  }

  /** Whether the course applies the rule of a finding. */
  boolean applies(Finding finding) {
    return policy(finding.rule()).applies();
  }

  /** The finding with the course's severity and points; a note costs nothing. */
  Finding graded(Finding finding) {
    RulePolicy policy = policy(finding.rule());
    Severity severity = policy.severity().orElse(finding.rule().severity());
    return finding.graded(severity, severity == Severity.NOTE ? 0 : policy.points());
  }
}
