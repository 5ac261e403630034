package tenthmark.checker.report;

import java.nio.file.Path;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.recording.Convention;

/**
 * Checks files one by one; what goes wrong with one does not reach the next.
 *
 * @param functions the worksheet functions
 * @param rules the rules
 * @param convention by which the course writes its measurements down
 */
public record FileChecker(Catalogue functions, RuleCatalogue rules, Convention convention) {

  /** A checker with all functions and rules under the classroom convention. */
  public static FileChecker load() {
    return new FileChecker(Catalogue.load(), RuleCatalogue.load(), Convention.BENCH);
  }

  /** Reads a file, recalculates it and applies the rules; never writes to the file. */
  public FileReport check(Path file) {
    try {
      Inspection inspection = Inspection.of(WorkbookFile.read(file), functions, convention);
      return FileReport.checked(file, rules.check(inspection));
    } catch (UnreadableFileException unreadable) {
      return FileReport.unchecked(file, unreadable.getMessage());
    } catch (OutOfMemoryError full) {
      return FileReport.unchecked(file, "needs more memory than the checker has");
    } catch (RuntimeException | StackOverflowError fault) {
      // A fault of the checker itself: this file is lost, the batch goes on.
      return FileReport.unchecked(file, "the checker failed on this file: " + fault);
    }
  }
}
