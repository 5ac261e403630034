package tenthmark.measurement.formula;

/**
 * A rectangle of cells on one sheet, corners included, counted from 0.
 *
 * @param sheet the sheet's name
 */
public record CellRange(String sheet, int left, int top, int right, int bottom) {}
