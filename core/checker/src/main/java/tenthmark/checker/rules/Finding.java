package tenthmark.checker.rules;

import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * Something that a rule found in a workbook.
 *
 * @param rule whose finding it is; how to fix it stands there
 * @param cell where; for a finding about the whole file the first cell that shows it
 * @param found what stands there
 * @param expected what should stand there and how that was computed
 * @param points what it costs, zero or greater
 */
public record Finding(
    RuleDeclaration rule, CellAddress cell, Message found, Message expected, double points) {

  /** The same finding as a note that costs nothing: what is missing may not be understood. */
  Finding inDoubt(Message why) {
    return new Finding(
        rule.withSeverity(Severity.NOTE),
        cell,
        Message.of("doubt.found", found, why),
        Message.of("doubt.expected"),
        0);
  }

  /** The same finding under a rule with another severity, and what it costs. */
  Finding graded(Severity severity, double cost) {
    return new Finding(rule.withSeverity(severity), cell, found, expected, cost);
  }
}
