package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Reason;

/** The profile that a command line names. */
final class ProfileFile {

  private ProfileFile() {}

  /** Reads a profile; if it cannot be used, prints each problem and gives nothing. */
  static Optional<Profile> read(Path file, PrintWriter err) {
    try {
      ProfileText text = new ProfileReader(RuleCatalogue.load().ids()).read(file);
      if (text instanceof ProfileText.Usable usable) {
        return Optional.of(usable.profile());
      }
      ((ProfileText.Unusable) text)
          .problems()
          .forEach(problem -> err.println(problem.in(file.toString())));
    } catch (IOException problem) {
      err.println(file + ": the profile cannot be read: " + Reason.of(problem));
    }
    return Optional.empty();
  }
}
