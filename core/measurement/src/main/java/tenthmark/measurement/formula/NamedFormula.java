package tenthmark.measurement.formula;

/**
 * What a name stands for in a document: a formula, be it a reference, a number or a calculation.
 *
 * @param text with or without an equals sign before it
 * @param base the cell from which its relative references are seen
 * @param size that of the sheets, at whose edges relative references go on at the other end
 */
public record NamedFormula(String text, CellAddress base, SheetSize size) {}
