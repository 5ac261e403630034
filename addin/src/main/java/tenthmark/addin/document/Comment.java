package tenthmark.addin.document;

/**
 * A comment on a cell.
 *
 * @param column of its cell, from 0
 * @param row of its cell, from 0
 */
public record Comment(int column, int row, String text) {}
