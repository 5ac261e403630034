package tenthmark.checker.rules;

import java.util.regex.Pattern;
import tenthmark.measurement.formula.CellAddress;

/**
 * All that is said once about a rule.
 *
 * @param id plain words with hyphens; frozen from the first release
 * @param severity how grave its findings are
 * @param looksFor what it looks for, one sentence
 * @param why why that matters, one sentence
 * @param fix how to put it right, one sentence
 * @param example a case and how it is right; names and numbers are invented
 */
public record RuleDeclaration(
    String id, Severity severity, String looksFor, String why, String fix, String example) {

  private static final Pattern ID = Pattern.compile("[a-z]+(?:-[a-z]+)*");

  /** Checks the id. */
  public RuleDeclaration {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException("not a rule id: " + id);
    }
  }

  /** The same rule with another severity. */
  public RuleDeclaration withSeverity(Severity other) {
    return new RuleDeclaration(id, other, looksFor, why, fix, example);
  }

  /** A finding of this rule, which costs nothing. */
  public Finding finding(CellAddress cell, String found, String expected) {
    return new Finding(this, cell, found, expected, 0);
  }
}
