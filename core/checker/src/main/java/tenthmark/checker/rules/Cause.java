package tenthmark.checker.rules;

import tenthmark.measurement.formula.CellAddress;

/**
 * The finding that another one follows from.
 *
 * @param rule the id of its rule
 * @param cell where it is
 */
public record Cause(String rule, CellAddress cell) {

  /** What tells a finding from others of its workbook. */
  static Cause of(Finding finding) {
    return new Cause(finding.rule().id(), finding.cell());
  }
}
