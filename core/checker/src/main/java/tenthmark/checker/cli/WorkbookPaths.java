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
import java.util.Set;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.submission.FileKind;
import tenthmark.checker.submission.HandedIn;
import tenthmark.checker.submission.Unpacked;
import tenthmark.checker.workbook.Reason;

/** The submissions that a command line means. */
final class WorkbookPaths {

  private final Unpacked archives;
  private final List<Path> skipped = new ArrayList<>();

  /**
   * @param archives unpacks those that are found
   */
  WorkbookPaths(Unpacked archives) {
    this.archives = archives;
  }

  /**
   * The files named, and the workbooks within the folders and archives named, each once, sorted.
   * Other files than workbooks in them are strays.
   */
  List<HandedIn> under(List<Path> paths) {
    Set<Object> seen = new HashSet<>();
    return paths.stream()
        .flatMap(path -> under(path).stream())
        .sorted(Comparator.comparing(HandedIn::path))
        .filter(file -> seen.add(identity(file.path())))
        .toList();
  }

  /** Folders that were found among the files and hold reports, in which nothing was looked for. */
  List<Path> skipped() {
    return skipped;
  }

  /** The same for two names of one file. */
  static Object identity(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException notThere) {
      return path;
    }
  }

  private List<HandedIn> under(Path path) {
    if (Files.isDirectory(path)) {
      return within(path);
    }
    boolean archive = Files.isRegularFile(path) && kind(path) == FileKind.ARCHIVE;
    return archive
        ? archives.files(path)
        : List.of(HandedIn.workbook(path, path.getNameCount() - 1));
  }

  private List<HandedIn> within(Path folder) {
    List<HandedIn> found = new ArrayList<>();
    int base = folder.getNameCount();
    try {
      // Behind the dot a link to a folder is the folder.
      Files.walkFileTree(folder.resolve("."), new Collector(folder, found));
    } catch (IOException problem) {
      found.add(HandedIn.problem(folder, base, "the folder cannot be read: " + Reason.of(problem)));
    }
    if (found.stream().allMatch(file -> file.kind() == FileKind.STRAY)) {
      found.add(HandedIn.problem(folder, base, "there is no workbook in this folder"));
    }
    return found;
  }

  private static FileKind kind(Path file) {
    return FileKind.of(file.getFileName().toString());
  }

  /**
   * Collects files by their endings, and links to them, but not copies among the reports of an
   * earlier check. Links to folders are not followed.
   */
  private final class Collector extends SimpleFileVisitor<Path> {

    private final Path folder;
    private final List<HandedIn> found;

    Collector(Path folder, List<HandedIn> found) {
      this.folder = folder;
      this.found = found;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path inner, BasicFileAttributes attributes) {
      boolean given = inner.equals(folder.resolve("."));
      if (given || !ReportFolder.isOne(inner)) {
        return FileVisitResult.CONTINUE;
      }
      skipped.add(named(inner));
      return FileVisitResult.SKIP_SUBTREE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      Path named = named(file);
      switch (Files.isRegularFile(file) ? kind(file) : FileKind.LEFT_BEHIND) {
        case WORKBOOK -> found.add(HandedIn.workbook(named, folder.getNameCount()));
        case ARCHIVE -> found.addAll(archives.files(named));
        case STRAY -> found.add(HandedIn.stray(named, folder.getNameCount()));
        case LEFT_BEHIND -> {}
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException problem) {
      found.add(
          HandedIn.problem(
              named(file), folder.getNameCount(), "cannot be opened: " + Reason.of(problem)));
      return FileVisitResult.CONTINUE;
    }

    private Path named(Path file) {
      return folder.resolve(folder.resolve(".").relativize(file));
    }
  }
}
