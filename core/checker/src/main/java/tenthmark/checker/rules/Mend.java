package tenthmark.checker.rules;

import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/**
 * What would stand in a cell if a finding were put right.
 *
 * @param cell where
 * @param content that should stand there
 */
public record Mend(CellAddress cell, Content content) {

  /** A number that should stand in a cell. */
  static Mend number(CellAddress cell, double number) {
    return new Mend(cell, Content.number(number));
  }
}
