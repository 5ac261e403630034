package tenthmark.checker.workbook;

import tenthmark.measurement.formula.CellAddress;

/**
 * A text that lies on a sheet: in a box, or in a shape of a drawing.
 *
 * @param cell the one under its upper left corner
 * @param text its paragraphs, one a line
 */
public record TextBox(CellAddress cell, String text) {}
