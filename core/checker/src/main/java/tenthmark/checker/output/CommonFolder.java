package tenthmark.checker.output;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The innermost folder that files have in common, by which what is written about them is laid out
 * as they are.
 *
 * @param path absolute
 */
public record CommonFolder(Path path) {

  /** The innermost folder that all files, and the archives of files, lie in. */
  public static CommonFolder of(List<Path> files) {
    return new CommonFolder(
        files.stream()
            .map(file -> folder(absolute(file)))
            .reduce(CommonFolder::common)
            .orElse(Path.of("").toAbsolutePath()));
  }

  /** Of a file in an archive the archive's. */
  private static Path folder(Path file) {
    for (Path step = file.getParent(); step != null; step = step.getParent()) {
      if (Files.isRegularFile(step)) {
        return step.getParent();
      }
    }
    return file.getParent();
  }

  private static Path common(Path one, Path other) {
    Path common = one;
    while (!other.startsWith(common)) {
      common = common.getParent();
    }
    return common;
  }

  /** A file's path below this folder. */
  public Path relative(Path file) {
    return path.relativize(absolute(file));
  }

  private static Path absolute(Path file) {
    return file.toAbsolutePath().normalize();
  }
}
