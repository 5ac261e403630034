package tenthmark.samples;

import java.util.List;

/**
 * One measurement of the sample table.
 *
 * @param quantity what was measured
 * @param symbol its symbol
 * @param value the reading, or a formula for it
 * @param unit unit of the value and of every contribution
 * @param division smallest marked step, or blank
 * @param spacing of the marks, or blank
 * @param ends number of places read, or blank
 * @param contributions in the order in which the rationale names them
 */
record BenchRecord(
    String quantity,
    String symbol,
    Object value,
    String unit,
    Object division,
    Object spacing,
    Object ends,
    List<Contribution> contributions) {

  /** The kinds of contribution, each with its column in the table. */
  enum Kind {
    READING("H"),
    PHYSICAL("I"),
    INSTRUMENT("J"),
    TIMING("K"),
    REPEAT("L");

    private final String column;

    Kind(String column) {
      this.column = column;
    }

    String column() {
      return column;
    }
  }

  /**
   * One contribution to the uncertainty.
   *
   * @param due what it is due to, for the rationale
   * @param size a number or a formula, in which {@code #} stands for the record's row
   */
  record Contribution(Kind kind, String due, Object size) {

    Object size(int row) {
      return size instanceof String formula ? formula.replace("#", Integer.toString(row)) : size;
    }
  }
}
