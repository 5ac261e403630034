package tenthmark.checker.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

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
    return paths.stream()
        .flatMap(path -> under(path).stream())
        .sorted(Comparator.comparing(Entry::path))
        .distinct()
        .toList();
  }

  private static List<Entry> under(Path path) {
    return Files.isDirectory(path) ? within(path) : List.of(new Entry(path, Optional.empty()));
  }

  private static List<Entry> within(Path folder) {
    List<Entry> found = new ArrayList<>();
    try {
      Files.walkFileTree(folder, new Collector(found));
    } catch (IOException problem) {
      found.add(new Entry(folder, Optional.of("the folder cannot be read: " + problem)));
    }
    if (found.isEmpty()) {
      return List.of(new Entry(folder, Optional.of("there is no workbook in this folder")));
    }
    return found;
  }

  /** Collects workbooks by their endings; lock files that office programs leave are none. */
  private static final class Collector extends SimpleFileVisitor<Path> {

    private final List<Entry> found;

    Collector(List<Entry> found) {
      this.found = found;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String name = file.getFileName().toString();
      String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
      boolean ours = !name.startsWith("~$") && !name.startsWith(".");
      if (ours && attributes.isRegularFile() && ENDINGS.contains(ending)) {
        found.add(new Entry(file, Optional.empty()));
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException problem) {
      found.add(new Entry(file, Optional.of("cannot be opened: " + problem)));
      return FileVisitResult.CONTINUE;
    }
  }
}
