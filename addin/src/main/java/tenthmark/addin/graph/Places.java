package tenthmark.addin.graph;

import tenthmark.measurement.formula.CellAddress;

/** Cells as formulas name them. */
final class Places {

  private Places() {}

  /** One that copies of the formula name too, such as $B$4. */
  static String fixed(int column, int row) {
    return place(column, row).replaceAll("([A-Z]+)(\\d+)", "\\$$1\\$$2");
  }

  static String place(int column, int row) {
    return new CellAddress("", column, row).place();
  }
}
