package tenthmark.checker.batch;

import java.util.List;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Unwritten;

/**
 * A file of a batch when its turn is over.
 *
 * @param report what was found in it
 * @param unwritten those of its reports that could not be written
 */
public record Finished(FileReport report, List<Unwritten> unwritten) {

  /** Copies the list. */
  public Finished {
    unwritten = List.copyOf(unwritten);
  }
}
