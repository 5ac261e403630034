package tenthmark.checker.workbook;

import java.time.Duration;

/**
 * How much a file may ask for, so that a small hostile file can neither fill the memory nor hold up
 * the files after it.
 *
 * @param time most time for reading and checking one file
 * @param inflatedBytes most bytes that the XML parts of a file may unpack to, or that an .xls file
 *     may have
 * @param parts most parts of an archive
 * @param cells most cells that hold something, repeated ones counted one by one, and comments and
 *     boxes of text
 * @param formulas most of these cells that hold a formula
 * @param names most names that the workbook defines
 * @param merged most merged areas
 */
public record Limits(
    Duration time, long inflatedBytes, int parts, int cells, int formulas, int names, int merged) {

  /** Far above a class workbook: 20,000 rows of 5 columns unpack to 18 MB (.ods), 9 MB (.xlsx). */
  public static final Limits DEFAULT =
      new Limits(Duration.ofSeconds(20), 128L << 20, 10_000, 500_000, 150_000, 20_000, 50_000);

  /** Most rows of a sheet in any format. */
  static final int ROWS = 1 << 20;

  /** Most columns of a sheet in any format. */
  static final int COLUMNS = 1 << 14;

  /** The same limits with another time. */
  public Limits withTime(Duration limit) {
    return new Limits(limit, inflatedBytes, parts, cells, formulas, names, merged);
  }

  /** The same limits with another number of unpacked bytes. */
  public Limits withInflatedBytes(long limit) {
    return new Limits(time, limit, parts, cells, formulas, names, merged);
  }

  /** The same limits with another number of cells. */
  public Limits withCells(int limit) {
    return new Limits(time, inflatedBytes, parts, limit, formulas, names, merged);
  }

  UnreadableFileException tooLarge() {
    return new UnreadableFileException("the workbook unpacks to more data than is allowed");
  }

  UnreadableFileException tooManyCells() {
    return tooMany(cells, "cells");
  }

  UnreadableFileException tooMany(int limit, String things) {
    return new UnreadableFileException("the workbook holds more than " + limit + " " + things);
  }
}
