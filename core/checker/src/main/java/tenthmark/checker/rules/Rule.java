package tenthmark.checker.rules;

import java.util.List;

/**
 * A rule of the checker: what it is and how it finds. A class that implements it and carries
 * {@code @AutoService(Rule.class)} is all that a new rule needs.
 */
public interface Rule {

  /** Everything said about the rule. */
  RuleDeclaration declaration();

  /** What the rule finds. */
  List<Finding> check(Inspection inspection);
}
