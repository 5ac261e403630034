package tenthmark.samples.template;

import tenthmark.samples.plan.Column;

/**
 * A graph of points with their uncertainties, and of the line fitted to them. Both are tables of
 * the workbook with the same columns.
 *
 * @param points key of the table of points
 * @param line key of the table of the line's ends
 * @param x what is drawn to the right; its heading is the title of the axis
 * @param y what is drawn upwards
 * @param xUncertainty half the length of the bars along x
 * @param yUncertainty half the length of the bars along y
 * @param at the column at whose left edge the graph begins, beside its points
 */
record Graph(
    String points,
    String line,
    Column x,
    Column y,
    Column xUncertainty,
    Column yUncertainty,
    String at) {}
