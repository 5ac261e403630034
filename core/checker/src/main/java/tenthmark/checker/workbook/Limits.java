package tenthmark.checker.workbook;

/**
 * How much a file may ask for, so that a small hostile file cannot fill the memory.
 *
 * @param streamedBytes most bytes that a part may unpack to which is read as a stream (.ods)
 * @param heldBytes most bytes that all parts may unpack to which are held in memory (.xlsx)
 * @param cells most cells that hold something, repeated ones counted one by one
 */
public record Limits(long streamedBytes, long heldBytes, int cells) {

  /** Far above a class workbook: 20,000 rows of 5 columns unpack to 18 MB (.ods), 9 MB (.xlsx). */
  public static final Limits DEFAULT = new Limits(256L << 20, 64L << 20, 500_000);

  /** Most rows of a sheet in any format. */
  static final int ROWS = 1 << 20;

  /** Most columns of a sheet in any format. */
  static final int COLUMNS = 1 << 14;

  UnreadableFileException tooManyCells() {
    return new UnreadableFileException("the workbook holds more than " + cells + " cells");
  }
}
