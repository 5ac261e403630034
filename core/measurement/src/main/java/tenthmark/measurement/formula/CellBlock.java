package tenthmark.measurement.formula;

/**
 * A rectangle of cells together with the document that they are in.
 *
 * @param range where they are
 * @param cells the document
 */
public record CellBlock(CellRange range, Cells cells) {}
