package tenthmark.measurement.formula;

/**
 * How large an array is.
 *
 * @param usedHeight rows that hold anything
 * @param usedWidth columns that hold anything
 */
record ArrayShape(int height, int width, int usedHeight, int usedWidth) {

  static final ArrayShape SINGLE = new ArrayShape(1, 1, 1, 1);

  static ArrayShape of(Operand.Block<?> block) {
    return new ArrayShape(block.height(), block.width(), block.rows().size(), block.usedWidth());
  }

  boolean isSingle() {
    return height == 1 && width == 1;
  }

  /** Together with another; one row, one column or one cell goes with each of the other's. */
  ArrayShape with(ArrayShape other) {
    int commonHeight = common(height, other.height);
    int commonWidth = common(width, other.width);
    return new ArrayShape(
        commonHeight,
        commonWidth,
        Math.min(commonHeight, Math.max(usedHeight, other.usedHeight)),
        Math.min(commonWidth, Math.max(usedWidth, other.usedWidth)));
  }

  private static int common(int one, int other) {
    if (one != other && one != 1 && other != 1) {
      throw FormulaException.of("formula.two.sizes");
    }
    return Math.max(one, other);
  }
}
