package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;

/** Reads hostile files as a batch does, and looks that neither memory nor the file suffers. */
public final class Bounded {

  /** What may be allocated for one file, garbage included; the heap for a batch has 512 MiB. */
  private static final long MOST_BYTES = 1200L << 20;

  /** More than a loaded machine needs; that time is limited at all has tests of its own. */
  public static final Limits PATIENT = Limits.DEFAULT.withTime(Duration.ofMinutes(5));

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private Bounded() {}

  @FunctionalInterface
  public interface Work<T> {
    T on(Workbook workbook) throws Exception;
  }

  public static Workbook read(Path file) throws Exception {
    return evaluated(file, workbook -> workbook);
  }

  public static <T> T evaluated(Path file, Work<T> work) throws Exception {
    return evaluated(file, PATIENT, work);
  }

  public static <T> T evaluated(Path file, Limits limits, Work<T> work) throws Exception {
    byte[] before = hash(file);
    try {
      return TimeLimit.within(
          limits.time(),
          () -> {
            long start = THREADS.getCurrentThreadAllocatedBytes();
            try {
              return work.on(WorkbookFile.read(file, limits));
            } finally {
              assertThat(THREADS.getCurrentThreadAllocatedBytes() - start)
                  .as("bytes allocated")
                  .isLessThan(MOST_BYTES);
            }
          });
    } finally {
      assertThat(hash(file)).as("hash of the file").isEqualTo(before);
    }
  }

  public static void refused(Path file, String line) {
    refused(file, PATIENT, line);
  }

  public static void refused(Path file, Limits limits, String line) {
    assertThatThrownBy(() -> evaluated(file, limits, workbook -> workbook))
        .isInstanceOf(UnreadableFileException.class)
        .hasMessage(line);
  }

  private static byte[] hash(Path file) throws Exception {
    return MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
  }
}
