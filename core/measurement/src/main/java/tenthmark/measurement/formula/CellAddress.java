package tenthmark.measurement.formula;

/**
 * A cell by its sheet's name and its place there, both counted from 0.
 *
 * @param sheet the sheet's name
 * @param column 0 for column A
 * @param row 0 for row 1
 */
public record CellAddress(String sheet, int column, int row) {}
