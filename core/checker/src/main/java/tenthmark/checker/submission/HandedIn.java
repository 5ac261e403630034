package tenthmark.checker.submission;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A file that was handed in.
 *
 * @param path what it is called: within an archive its name there, below the archive's own path
 * @param content the file that holds its content
 * @param base how many steps of the path lead to what was handed in
 * @param kind what it is by its name; a workbook, or a stray, which is not checked
 * @param problem why it cannot be checked though it should be, in one line
 */
public record HandedIn(Path path, Path content, int base, FileKind kind, Optional<String> problem) {

  /** A file to check, which lies where it is called. */
  public static HandedIn workbook(Path path, int base) {
    return workbook(path, path, base);
  }

  /** A file to check, which lies somewhere else. */
  static HandedIn workbook(Path path, Path content, int base) {
    return new HandedIn(path, content, base, FileKind.WORKBOOK, Optional.empty());
  }

  /** A file that is no workbook. */
  public static HandedIn stray(Path path, int base) {
    return new HandedIn(path, path, base, FileKind.STRAY, Optional.empty());
  }

  /** What cannot be checked. */
  public static HandedIn problem(Path path, int base, String line) {
    return new HandedIn(path, path, base, FileKind.WORKBOOK, Optional.of(line));
  }
}
