package tenthmark.checker.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.reading.InsideProfile;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
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
    return check(file, file);
  }

  /**
   * The same for a file that is called otherwise than where it lies, as one out of an archive.
   *
   * @param file what it is called
   * @param content the file that holds its content
   */
  public FileReport check(Path file, Path content) {
    return graded(examine(file, content));
  }

  /** What all rules find, before the course grades it: the same whatever its grading is. */
  public FileReport examine(Path file, Path content) {
    return report(
        file,
        content,
        (inspection, own) ->
            own.equals(profile)
                ? rules.examine(inspection)
                : rules.grade(rules.examine(inspection), own.grading()));
  }

  /** The report on a file that was examined, as the course grades it. */
  public FileReport graded(FileReport examined) {
    return examined.withFindings(rules.grade(examined.findings(), profile.grading()));
  }

  /**
   * Reads a file and recalculates it, without the rules; its report has no findings.
   *
   * @param file what it is called
   * @param content the file that holds its content
   * @param reader sees what was read, within the limits of the file
   */
  public FileReport read(Path file, Path content, Consumer<Inspection> reader) {
    return report(
        file,
        content,
        (inspection, own) -> {
          reader.accept(inspection);
          return List.of();
        });
  }

  private FileReport report(
      Path file, Path content, BiFunction<Inspection, Profile, List<Finding>> findings) {
    try {
      return TimeLimit.within(limits.time(), () -> inspected(file, content, findings));
    } catch (UnreadableFileException unreadable) {
      return FileReport.unchecked(file, unreadable.getMessage());
    } catch (RuntimeException | StackOverflowError fault) {
      // A fault of the checker itself: this file is lost, the batch goes on.
      return FileReport.unchecked(file, Reason.of(fault));
    }
  }

  private FileReport inspected(
      Path file, Path content, BiFunction<Inspection, Profile, List<Finding>> findings)
      throws UnreadableFileException {
    Workbook workbook = WorkbookFile.read(content, limits);
    Evaluation evaluation = Evaluation.of(workbook, functions);
    Profile own = profile(workbook, evaluation);
    Inspection inspection = Inspection.of(workbook, evaluation, own.course());
    return FileReport.checked(file, Contents.of(inspection), findings.apply(inspection, own));
  }

  /** Where no profile is named, the one that the workbook was handed out with. */
  private Profile profile(Workbook workbook, Evaluation evaluation) throws UnreadableFileException {
    Optional<String> inside =
        profile.equals(Profile.NONE) ? InsideProfile.of(workbook, evaluation) : Optional.empty();
    if (inside.isEmpty()) {
      return profile;
    }
    ProfileText text = new ProfileReader(rules.ids()).read(inside.get());
    if (text instanceof ProfileText.Usable usable) {
      return usable.profile();
    }
    throw new UnreadableFileException(
        "the profile that it holds cannot be used: "
            + ((ProfileText.Unusable) text).problems().get(0).in(InsideProfile.NAME));
  }
}
