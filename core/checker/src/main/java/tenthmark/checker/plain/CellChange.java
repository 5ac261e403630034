package tenthmark.checker.plain;

import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/**
 * What becomes of a cell in a plain copy.
 *
 * @param cell where
 * @param value that it shows
 * @param keepsFormula whether its formula stays, which then calls no LAB function itself but
 *     depends on one
 */
record CellChange(CellAddress cell, Value value, boolean keepsFormula) {}
