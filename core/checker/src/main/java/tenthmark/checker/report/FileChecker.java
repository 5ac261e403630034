package tenthmark.checker.report;

import java.nio.file.Path;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;

/**
 * Checks files one by one; what goes wrong with one does not reach the next.
 *
 * @param functions the worksheet functions
 * @param rules the rules
 * @param profile what the course expects and what it makes of the rules
 * @param limits what each file may ask for
 */
public record FileChecker(
    Catalogue functions, RuleCatalogue rules, Profile profile, Limits limits) {

  /** A checker with all functions and rules, without a profile. */
  public static FileChecker load() {
    return load(Profile.NONE, Limits.DEFAULT);
  }

  /** A checker with all functions and rules for one course. */
  public static FileChecker load(Profile profile, Limits limits) {
    return new FileChecker(Catalogue.load(), RuleCatalogue.load(), profile, limits);
  }

  /** Reads a file, recalculates it and applies the rules; never writes to the file. */
  public FileReport check(Path file) {
    try {
      return TimeLimit.within(limits.time(), () -> checked(file));
    } catch (UnreadableFileException unreadable) {
      return FileReport.unchecked(file, unreadable.getMessage());
    } catch (RuntimeException | StackOverflowError fault) {
      // A fault of the checker itself: this file is lost, the batch goes on.
      return FileReport.unchecked(file, "the checker failed on this file: " + fault);
    }
  }

  private FileReport checked(Path file) throws UnreadableFileException {
    Inspection inspection =
        Inspection.of(WorkbookFile.read(file, limits), functions, profile.course());
    return FileReport.checked(
        file, Contents.of(inspection), rules.check(inspection, profile.grading()));
  }
}
