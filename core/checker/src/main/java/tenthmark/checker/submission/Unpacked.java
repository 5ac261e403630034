package tenthmark.checker.submission;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Archives of submissions, whose workbooks lie in a folder of their own while they are checked. No
 * file there bears a name from an archive. The folder is removed at the end, at the latest with the
 * program.
 */
public final class Unpacked implements AutoCloseable {

  private static final String TOO_MUCH = "the archive unpacks to more data than is allowed";

  private final ArchiveLimits limits;
  private final Path folder;
  private long left;
  private int entries;
  private int files;

  private Unpacked(ArchiveLimits limits, Path folder) {
    this.limits = limits;
    this.folder = folder;
    this.left = limits.bytes();
  }

  /** Begins a folder that nobody else can read. */
  public static Unpacked in(ArchiveLimits limits) throws IOException {
    Unpacked unpacked = new Unpacked(limits, Files.createTempDirectory("tenthmark-submissions-"));
    Runtime.getRuntime().addShutdownHook(new Thread(unpacked::closeAtExit, "unpacked"));
    return unpacked;
  }

  /**
   * What an archive holds, archives in it included: workbooks, which can be read until this is
   * closed, and other files, which are no workbooks. Whatever goes wrong with one of them, or with
   * the archive, becomes the problem of its path.
   *
   * @param archive also the start of the paths of what it holds
   */
  public List<HandedIn> files(Path archive) {
    return files(archive, archive, archive.getNameCount(), 1);
  }

  private List<HandedIn> files(Path archive, Path content, int base, int depth) {
    try (ZipFile zip = ZipFile.builder().setPath(content).get()) {
      List<ZipArchiveEntry> all = Collections.list(zip.getEntries());
      if (isWorkbook(zip)) {
        return List.of(HandedIn.workbook(archive, content, base - 1));
      }
      entries += all.size();
      return entries > limits.entries()
          ? broken(archive, base, "there are more than " + limits.entries() + " files in archives")
          : taken(archive, zip, all, base, depth);
    } catch (IOException | RuntimeException damage) {
      // The library reports some damage by unchecked exceptions.
      return broken(archive, base, "the archive is damaged or cut short");
    } catch (OutOfMemoryError exhausted) {
      return broken(archive, base, "the archive lists more files than there is memory for");
    }
  }

  private static List<HandedIn> broken(Path archive, int base, String line) {
    return List.of(HandedIn.problem(archive, base - 1, line));
  }

  /** A workbook is a zip archive too, and may come under its name. */
  private static boolean isWorkbook(ZipFile zip) {
    return zip.getEntry("[Content_Types].xml") != null
        || zip.getEntry("mimetype") != null && zip.getEntry("content.xml") != null;
  }

  private List<HandedIn> taken(
      Path archive, ZipFile zip, List<ZipArchiveEntry> all, int base, int depth) {
    List<HandedIn> found = new ArrayList<>();
    Set<Path> paths = new HashSet<>();
    for (ZipArchiveEntry entry : all) {
      if (entry.isDirectory()) {
        continue;
      }
      Optional<Path> path = EntryName.below(archive, entry);
      if (path.isEmpty()) {
        found.add(
            HandedIn.problem(
                archive.resolve("file " + (found.size() + 1)),
                base,
                "its name in the archive cannot be used"));
      } else if (FileKind.of(name(path.get())) != FileKind.LEFT_BEHIND) {
        found.addAll(
            paths.add(path.get())
                ? taken(path.get(), zip, entry, base, depth)
                : List.of(twice(path.get(), base)));
      }
    }
    return found;
  }

  private static String name(Path path) {
    return path.getFileName().toString();
  }

  /** Under a path of its own: the one that it shares is that of the first. */
  private static HandedIn twice(Path path, int base) {
    return HandedIn.problem(
        path.resolveSibling(name(path) + " (once more)"),
        base,
        "the archive holds another file of this name, and only the first is checked");
  }

  private List<HandedIn> taken(Path path, ZipFile zip, ZipArchiveEntry entry, int base, int depth) {
    FileKind kind = FileKind.of(name(path));
    if (kind == FileKind.STRAY || entry.isUnixSymlink()) {
      return List.of(HandedIn.stray(path, base));
    }
    if (!zip.canReadEntryData(entry)) {
      boolean locked = entry.getGeneralPurposeBit().usesEncryption();
      return List.of(
          HandedIn.problem(
              path,
              base,
              locked
                  ? "it is locked by a password in the archive"
                  : "it is packed in a way that cannot be read"));
    }
    try {
      Path content = copy(zip, entry);
      if (kind == FileKind.WORKBOOK) {
        return List.of(HandedIn.workbook(path, content, base));
      }
      return depth == limits.depth()
          ? List.of(HandedIn.problem(path, base, "it lies in too many archives"))
          : files(path, content, base, depth + 1);
    } catch (TooMuchException tooMuch) {
      return List.of(HandedIn.problem(path, base, tooMuch.getMessage()));
    } catch (IOException | RuntimeException damage) {
      return List.of(HandedIn.problem(path, base, "it is damaged in the archive"));
    }
  }

  private static final class TooMuchException extends IOException {
    private static final long serialVersionUID = 1L;

    TooMuchException(String line) {
      super(line);
    }
  }

  /** Takes a file out of the archive, whatever size it claims, and holds it to its check sum. */
  private Path copy(ZipFile zip, ZipArchiveEntry entry) throws IOException {
    Path file = folder.resolve(String.valueOf(++files));
    CRC32 sum = new CRC32();
    long size = 0;
    byte[] buffer = new byte[1 << 16];
    try (InputStream in = zip.getInputStream(entry);
        OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
        size += count;
        left -= count;
        if (left < 0) {
          throw new TooMuchException(TOO_MUCH);
        }
        if (size > limits.fileBytes()) {
          throw new TooMuchException("it is larger than " + (limits.fileBytes() >> 20) + " MiB");
        }
        sum.update(buffer, 0, count);
        out.write(buffer, 0, count);
      }
    }
    if (sum.getValue() != entry.getCrc()) {
      throw new IOException("the check sum is another");
    }
    return file;
  }

  /**
   * Removes the folder.
   *
   * @throws IOException if something is left in it
   */
  @Override
  public void close() throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(path);
        }
      }
    }
  }

  /** Of a program that is stopped, whose terminal is all that can still be told. */
  private void closeAtExit() {
    try {
      close();
    } catch (IOException kept) {
      System.err.println(folder + ": unpacked submissions are left there: " + kept);
    }
  }
}
