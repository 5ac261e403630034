package tenthmark.checker.workbook;

import tenthmark.measurement.formula.CellAddress;

/** A cell that holds something. */
public record Cell(CellAddress address, Content content) {}
