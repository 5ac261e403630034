package tenthmark.checker.output;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which reports lie in a folder, of which workbook each is and what it was made of, kept in a file
 * beside them from one check to the next: so no report is written that is there already, and none
 * stays whose workbook is gone.
 *
 * <p>The file begins empty with each check and gets a line with each report. What a check that was
 * stopped left out is written anew, never taken for what it is not.
 */
public final class WrittenReports implements AutoCloseable {

  private static final String NAME = ".tenthmark-written";

  /**
   * A report.
   *
   * @param report its file
   * @param submission the workbook that it is about
   * @param inputs the fingerprint of all that it was made of
   * @param size of its file, which tells with the time whether it is still the one that was written
   * @param time when its file was written, in milliseconds
   */
  record Entry(String report, String submission, String inputs, long size, long time) {

    Path file() {
      return Path.of(report);
    }

    Path workbook() {
      return Path.of(submission);
    }

    private boolean isUnchanged() {
      try {
        return equals(of(file(), workbook(), inputs));
      } catch (IOException gone) {
        return false;
      }
    }

    private static Entry of(Path report, Path submission, String inputs) throws IOException {
      BasicFileAttributes file = Files.readAttributes(report, BasicFileAttributes.class);
      return new Entry(
          report.toString(),
          submission.toString(),
          inputs,
          file.size(),
          file.lastModifiedTime().toMillis());
    }
  }

  private final ObjectMapper mapper = new ObjectMapper();
  private final Map<String, Entry> earlier = new HashMap<>();
  private final Map<String, Entry> now = new LinkedHashMap<>();
  private final boolean keep;
  private final BufferedWriter file;

  private WrittenReports(Path folder, boolean keep) throws IOException {
    this.keep = keep;
    Path list = folder.resolve(NAME);
    if (Files.exists(list)) {
      Files.readAllLines(list).forEach(this::read);
    }
    this.file = Files.newBufferedWriter(list);
  }

  /**
   * Begins a check.
   *
   * @param keep whether reports that are there already stay; if not, all are written anew
   */
  public static WrittenReports in(Path folder, boolean keep) throws IOException {
    return new WrittenReports(folder.toAbsolutePath().normalize(), keep);
  }

  /** A line that was cut short tells nothing: its report is written anew. */
  private void read(String line) {
    try {
      Optional.ofNullable(mapper.readValue(line, Entry.class))
          .ifPresent(entry -> earlier.put(entry.report(), entry));
    } catch (JsonProcessingException cutShort) {
      // As said above.
    }
  }

  /** Whether a report is there already; if it is, that holds for the next check too. */
  synchronized boolean isThere(Path report, String inputs) throws IOException {
    Entry entry = earlier.get(report.toString());
    if (!keep || entry == null || !entry.inputs().equals(inputs) || !entry.isUnchanged()) {
      return false;
    }
    add(entry);
    return true;
  }

  /** Notes that a report was written. */
  synchronized void written(Path report, Path submission, String inputs) throws IOException {
    add(Entry.of(report, submission, inputs));
  }

  /**
   * What tells whether reports are still those that were written; nothing of one that is not there.
   */
  synchronized List<Object> traces(Collection<Path> reports) {
    return reports.stream()
        .<Object>map(report -> Optional.ofNullable(now.get(report.toString())))
        .toList();
  }

  private void add(Entry entry) throws IOException {
    now.put(entry.report(), entry);
    file.write(mapper.writeValueAsString(entry));
    file.newLine();
  }

  /** Reports of earlier checks, as they were written, that this one has not written anew. */
  synchronized List<Entry> left() {
    return earlier.values().stream()
        .filter(entry -> !now.containsKey(entry.report()) && entry.isUnchanged())
        .toList();
  }

  /** Keeps what is known of a report of an earlier check. */
  synchronized void keep(Entry entry) throws IOException {
    add(entry);
  }

  @Override
  public synchronized void close() throws IOException {
    file.close();
  }
}
