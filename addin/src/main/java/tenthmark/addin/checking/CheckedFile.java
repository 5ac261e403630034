package tenthmark.addin.checking;

import java.util.List;

/**
 * What the checker's JSON says about one file.
 *
 * @param problem why it could not be checked; null if it could
 * @param reading what was read in it; null if it could not be checked
 */
public record CheckedFile(
    String file, boolean checked, String problem, Coverage reading, List<Finding> findings) {

  /**
   * How much was read.
   *
   * @param records how many
   * @param numbersNotRead how many numbers the checker could make nothing of
   */
  public record Coverage(int records, int numbersNotRead) {}
}
