package tenthmark.checker.record;

import tenthmark.measurement.formula.CellAddress;

/**
 * The text that says why the contributions are what they are.
 *
 * @param address where it stands or should stand
 * @param text empty if it is missing
 */
public record Rationale(CellAddress address, String text) {}
