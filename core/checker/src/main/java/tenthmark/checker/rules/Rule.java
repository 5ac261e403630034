package tenthmark.checker.rules;

import java.util.List;

/**
 * A rule of the checker: what it is and how it finds. A class that implements it and carries
 * {@code @AutoService(Rule.class)} is all that a new rule needs.
 */
public interface Rule {

  /** Everything said about the rule. */
  RuleDeclaration declaration();

  /**
   * Whether its findings rest on what the cells of a table were taken for; where the table may be
   * meant otherwise, {@link Doubts} makes notes of them.
   */
  default boolean restsOnTables() {
    return false;
  }

  /** What the rule finds. */
  List<Finding> check(Inspection inspection);
}
