package tenthmark.checker.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.workbook.Reason;

/** The workbooks that a command line means. */
final class WorkbookPaths {

  /**
   * A file to check, or a path that cannot be checked.
   *
   * @param problem why it cannot be checked, in one line
   */
  record Entry(Path path, Optional<String> problem) {}

  private static final Set<String> ENDINGS = Set.of("xlsx", "xlsm", "xls", "ods");

  private WorkbookPaths() {}

  /** The files named, and the workbooks within the folders named, each once, sorted. */
  static List<Entry> under(List<Path> paths) {
    Set<Object> seen = new HashSet<>();
    return paths.stream()
        .flatMap(path -> under(path).stream())
        .sorted(Comparator.comparing(Entry::path))
        .filter(entry -> seen.add(identity(entry.path())))
        .toList();
  }

  /** The same for two names of one file. */
  private static Object identity(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException notThere) {
      return path;
    }
  }

  private static List<Entry> under(Path path) {
    return Files.isDirectory(path) ? within(path) : List.of(new Entry(path, Optional.empty()));
  }

  private static List<Entry> within(Path folder) {
    List<Entry> found = new ArrayList<>();
    try {
      // Behind the dot a link to a folder is the folder.
      Files.walkFileTree(folder.resolve("."), new Collector(folder, found));
    } catch (IOException problem) {
      found.add(new Entry(folder, Optional.of("the folder cannot be read: " + Reason.of(problem))));
    }
    if (found.isEmpty()) {
      return List.of(new Entry(folder, Optional.of("there is no workbook in this folder")));
    }
    return found;
  }

  /**
   * Collects workbooks by their endings, and links to them; lock files that office programs leave
   * are none, nor are copies among the reports of an earlier check. Links to folders are not
   * followed.
   */
  private static final class Collector extends SimpleFileVisitor<Path> {

    private final Path folder;
    private final List<Entry> found;

    Collector(Path folder, List<Entry> found) {
      this.folder = folder;
      this.found = found;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path inner, BasicFileAttributes attributes) {
      boolean given = inner.equals(folder.resolve("."));
      return !given && ReportFolder.isOne(inner)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String name = file.getFileName().toString();
      String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
      boolean ours = !name.startsWith("~$") && !name.startsWith(".");
      if (ours && Files.isRegularFile(file) && ENDINGS.contains(ending)) {
        found.add(new Entry(named(file), Optional.empty()));
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException problem) {
      found.add(new Entry(named(file), Optional.of("cannot be opened: " + Reason.of(problem))));
      return FileVisitResult.CONTINUE;
    }

    private Path named(Path file) {
      return folder.resolve(folder.resolve(".").relativize(file));
    }
  }
}
