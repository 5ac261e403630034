package tenthmark.measurement.formula;

/** How many columns and rows the sheets of a document have. */
public enum SheetSize {
  /** 256 columns of 65,536 rows, as in .xls files. */
  SMALL(256, 65_536),
  /** 16,384 columns of 1,048,576 rows, as in Calc and in .ods and .xlsx files. */
  LARGE(16_384, 1_048_576);

  private final int columns;
  private final int rows;

  SheetSize(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
  }

  /** Number of columns. */
  public int columns() {
    return columns;
  }

  /** Number of rows. */
  public int rows() {
    return rows;
  }
}
