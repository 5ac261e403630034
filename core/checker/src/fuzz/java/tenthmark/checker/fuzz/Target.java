package tenthmark.checker.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Limits;
import tenthmark.measurement.catalogue.Catalogue;

/** Checks one input as a batch would; only one line of refusal or findings may come of it. */
final class Target {

  private static final Limits LIMITS =
      new Limits(Duration.ofMinutes(2), 8L << 20, 200, 20_000, 5_000, 500, 500);

  private static final FileChecker CHECKER =
      new FileChecker(Catalogue.load(), RuleCatalogue.load(), Profile.NONE, LIMITS);

  static {
    // Loads the classes, which takes long under instrumentation, outside of the time for a file.
    new FileChecker(
            CHECKER.functions(),
            CHECKER.rules(),
            CHECKER.profile(),
            LIMITS.withTime(Duration.ofMinutes(5)))
        .check(Seeds.SAVED.resolve("lab-table.xlsx"));
  }

  private static final Path FILE = temporary();

  private Target() {}

  static void check(byte[] content) {
    try {
      Files.write(FILE, content);
      FileReport report = CHECKER.check(FILE);
      report.problem().filter(Target::isFault).ifPresent(Target::fail);
      if (!Arrays.equals(content, Files.readAllBytes(FILE))) {
        fail("the file was changed");
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static boolean isFault(String line) {
    return line.contains("the checker failed")
        || line.contains("memory")
        || line.contains("takes longer")
        || line.contains("\n");
  }

  private static void fail(String line) {
    throw new AssertionError(line);
  }

  private static Path temporary() {
    try {
      Path file = Files.createTempFile("tenthmark-fuzz", ".bin");
      file.toFile().deleteOnExit();
      return file;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
