package tenthmark.checker.output;

import java.util.List;
import tenthmark.checker.report.Unwritten;

/**
 * What became of reports of earlier checks that nothing is checked for any more.
 *
 * @param gone a line for each that was taken away because its workbook is gone
 * @param unwritten what could not be done
 */
public record Tidied(List<String> gone, List<Unwritten> unwritten) {

  /** Copies the lists. */
  public Tidied {
    gone = List.copyOf(gone);
    unwritten = List.copyOf(unwritten);
  }
}
