package tenthmark.checker.carried;

import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * An uncertainty that a student states for a calculated value.
 *
 * @param name how a sentence names the value
 * @param value where the value stands
 * @param place where the uncertainty stands
 * @param uncertainty the number stated, in the unit of the value
 */
public record Claim(Message name, CellAddress value, CellAddress place, double uncertainty) {}
