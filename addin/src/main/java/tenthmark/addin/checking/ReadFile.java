package tenthmark.addin.checking;

import java.util.List;

/**
 * What the checker's JSON says about how one file was read.
 *
 * @param problem why it could not be read; null if it could
 * @param records how many were read
 * @param numbersNotRead how many numbers the checker could make nothing of
 * @param cells what the cells were taken for, sheet by sheet and from top to bottom
 */
public record ReadFile(
    String file, boolean read, String problem, int records, int numbersNotRead, List<Cells> cells) {

  /**
   * Cells that were taken for the same.
   *
   * @param sheet name of the sheet
   * @param cells a cell or a range, such as C5:C14
   * @param read whether they were read at all
   * @param taken what they were taken for, or why they were not read, in the language asked for
   */
  public record Cells(String sheet, String cells, boolean read, String taken) {}
}
