package tenthmark.checker.rules;

import java.util.Optional;

/**
 * What a course makes of one rule.
 *
 * @param applies whether the rule is applied at all
 * @param severity instead of the rule's own
 * @param points that each finding costs, zero or greater
 */
public record RulePolicy(boolean applies, Optional<Severity> severity, double points) {

  /** The rule as it is declared, without points. */
  static final RulePolicy DECLARED = new RulePolicy(true, Optional.empty(), 0);
}
