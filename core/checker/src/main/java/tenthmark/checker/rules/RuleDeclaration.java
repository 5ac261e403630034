package tenthmark.checker.rules;

import java.util.regex.Pattern;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * What a rule is. What is said about it stands once in each language, in {@code texts.properties}
 * and the files beside it, under the rule's id.
 *
 * @param id plain words with hyphens; frozen from the first release
 * @param severity how grave its findings are
 */
public record RuleDeclaration(String id, Severity severity) {

  private static final Pattern ID = Pattern.compile("[a-z]+(?:-[a-z]+)*");

  /** Checks the id. */
  public RuleDeclaration {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException("not a rule id: " + id);
    }
  }

  /** What it looks for, one sentence. */
  public Message looksFor() {
    return Message.of(id + ".looks-for");
  }

  /** Why that matters, one sentence. */
  public Message why() {
    return Message.of(id + ".why");
  }

  /** How to put it right, one sentence. */
  public Message fix() {
    return Message.of(id + ".fix");
  }

  /** A case and how it is right; names and numbers are invented. */
  public Message example() {
    return Message.of(id + ".example");
  }

  /** The same rule with another severity. */
  public RuleDeclaration withSeverity(Severity other) {
    return new RuleDeclaration(id, other);
  }

  /** A finding of this rule, which costs nothing. */
  public Finding finding(CellAddress cell, Message found, Message expected) {
    return new Finding(this, cell, found, expected);
  }
}
