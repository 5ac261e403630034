package tenthmark.checker.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Holds a folder of reports for one check at a time, by a lock on the file that marks it as such a
 * folder. The mark stays when the check ends.
 */
public final class FolderLock implements AutoCloseable {

  private static final String MARK = ".tenthmark-reports";

  private static final String TEXT =
      "Reports of tenthmark-checker lie in this folder. Workbooks in it are not checked.\n";

  private final FileChannel mark;

  private FolderLock(FileChannel mark) {
    this.mark = mark;
  }

  /** Whether a folder holds reports. */
  static boolean isMarked(Path folder) {
    return Files.isRegularFile(folder.resolve(MARK));
  }

  /**
   * Marks a folder, which is made if it does not exist, and takes it.
   *
   * @return nothing if another check has it
   */
  public static Optional<FolderLock> take(Path folder) throws IOException {
    Files.createDirectories(folder);
    FileChannel mark =
        FileChannel.open(folder.resolve(MARK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    boolean taken = false;
    try {
      taken = mark.tryLock() != null;
    } catch (OverlappingFileLockException here) {
      // Another check of this very process has it.
    } finally {
      if (!taken) {
        mark.close();
      }
    }
    if (!taken) {
      return Optional.empty();
    }
    if (mark.size() == 0) {
      mark.write(ByteBuffer.wrap(TEXT.getBytes(StandardCharsets.UTF_8)));
    }
    return Optional.of(new FolderLock(mark));
  }

  @Override
  public void close() throws IOException {
    mark.close();
  }
}
