package tenthmark.checker.carried;

import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * A recorded measurement that a value is calculated from.
 *
 * @param name how a sentence names the record
 * @param cell where its value stands
 * @param value its value
 * @param uncertainty its recorded uncertainty, zero or greater, in the unit of the value
 */
public record RecordedInput(Message name, CellAddress cell, double value, double uncertainty) {}
