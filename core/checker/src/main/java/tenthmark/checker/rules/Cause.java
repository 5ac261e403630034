package tenthmark.checker.rules;

import tenthmark.measurement.formula.CellAddress;

/**
 * The finding that another one follows from.
 *
 * @param rule the id of its rule
 * @param cell where it is
 */
public record Cause(String rule, CellAddress cell) {}
