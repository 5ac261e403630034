package tenthmark.checker.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import tenthmark.checker.batch.Basis;

/**
 * Copies of the files that decided a grade: the profile with what it includes, the remarks and the
 * roster, each set under the fingerprint that reports bear. What was kept stays when a file
 * changes, so that a contested grade can be made again from files alone.
 */
public final class KeptFiles {

  private static final String KEPT = "kept";

  /** So many digits of the check sum as reports bear. */
  private static final int SHORT = 12;

  private KeptFiles() {}

  /**
   * Keeps files that belong together, the first of which gives the name of their folder.
   *
   * @param reports the folder of reports
   * @return where they are kept
   */
  public static Path keep(Path reports, List<Path> files) throws IOException {
    String fingerprint = Basis.sha256(files).substring(0, SHORT);
    Path place = reports.resolve(KEPT).resolve(files.get(0).getFileName() + "-" + fingerprint);
    Path base = files.get(0).toAbsolutePath().normalize().getParent();
    for (Path file : files) {
      Path copy = place.resolve(below(base, file.toAbsolutePath().normalize()));
      if (!Files.exists(copy)) {
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
    return place;
  }

  /** An included file from elsewhere lies beside the others. */
  private static Path below(Path base, Path file) {
    return file.startsWith(base) ? base.relativize(file) : file.getFileName();
  }
}
