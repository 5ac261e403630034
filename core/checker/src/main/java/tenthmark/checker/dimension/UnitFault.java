package tenthmark.checker.dimension;

import tenthmark.checker.workbook.Cell;
import tenthmark.measurement.wording.Message;

/**
 * A formula whose units do not fit.
 *
 * @param cell the formula
 * @param found what its units come to
 * @param expected what would fit
 * @param certain whether no number written in the formula can have a unit of its own
 */
public record UnitFault(Cell cell, Message found, Message expected, boolean certain) {}
