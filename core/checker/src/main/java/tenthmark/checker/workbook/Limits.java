package tenthmark.checker.workbook;

/**
 * How much a file may ask for, so that a small hostile file cannot fill the memory.
 *
 * @param inflatedBytes most bytes that the XML parts of a file may unpack to
 * @param cells most cells that hold something, repeated ones counted one by one
 */
public record Limits(long inflatedBytes, int cells) {

  /** Far above a class workbook: 20,000 logged rows of 5 columns unpack to some 10 MB. */
  public static final Limits DEFAULT = new Limits(64L << 20, 500_000);

  /** Most rows of a sheet in any format. */
  static final int ROWS = 1 << 20;

  /** Most columns of a sheet in any format. */
  static final int COLUMNS = 1 << 14;

  UnreadableFileException tooManyCells() {
    return new UnreadableFileException("the workbook holds more than " + cells + " cells");
  }
}
