package tenthmark.checker.report;

import java.nio.file.Path;
import java.util.List;

/**
 * What lay among the workbooks and was not checked.
 *
 * @param skipped folders that hold reports of a check
 * @param strays files that are no workbooks
 */
public record LeftOut(List<Path> skipped, List<Path> strays) {

  /** Where all was checked. */
  public static final LeftOut NOTHING = new LeftOut(List.of(), List.of());

  /** Copies the lists. */
  public LeftOut {
    skipped = List.copyOf(skipped);
    strays = List.copyOf(strays);
  }
}
