package tenthmark.checker.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Reason;

/**
 * The findings of earlier checks in a file: a line for what they rest on, then one for each
 * workbook that was checked, the last one of a workbook being its newest. A line is added as soon
 * as a workbook is done, so that a batch that was stopped goes on where it stood, and nothing is
 * written where nothing is new. The file belongs to one check at a time.
 *
 * <p>Findings are kept before a course grades them: another grading needs no workbook.
 */
public final class EarlierResults implements AutoCloseable {

  private record Heading(String holds, Basis basis) {

    private static final String HOLDS = "results of tenthmark-checker";

    static Heading of(Basis basis) {
      return new Heading(HOLDS, basis);
    }
  }

  private record Result(String sha256, FileReport report) {}

  private final FileChannel file;
  private final ResultLines lines;
  private final Map<Path, Result> earlier = new HashMap<>();
  private final Map<Path, Result> made = new ConcurrentHashMap<>();
  private final Map<Path, String> hashes = new ConcurrentHashMap<>();
  private final AtomicInteger carriedOver = new AtomicInteger();
  private final Map<Path, String> unkept = new TreeMap<>();

  /** Why the file takes no more lines, if it does not. */
  private Optional<IOException> full = Optional.empty();

  private EarlierResults(FileChannel file, RuleCatalogue rules) {
    this.file = file;
    this.lines = new ResultLines(rules);
  }

  /**
   * Opens a file of results, or begins one.
   *
   * @param keep whether earlier results may be used again; if not, all begins anew
   * @throws IOException if the file cannot be read or written, is some other file or belongs to
   *     another check
   */
  public static EarlierResults open(Path file, Basis basis, RuleCatalogue rules, boolean keep)
      throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    EarlierResults results = new EarlierResults(channel, rules);
    try {
      results.lock();
      results.begin(Heading.of(basis), keep);
      return results;
    } catch (IOException | RuntimeException problem) {
      channel.close();
      throw problem;
    }
  }

  private void lock() throws IOException {
    try {
      if (file.tryLock() != null) {
        return;
      }
    } catch (OverlappingFileLockException here) {
      // Another check of this very process has it.
    }
    throw new IOException(
        "another check keeps its results there; wait for its end, or name another file");
  }

  private void begin(Heading heading, boolean keep) throws IOException {
    boolean usable = file.size() > 0 && read(heading, keep);
    if (!usable || !keep) {
      earlier.clear();
      file.truncate(0);
      append(lines.write(heading));
      return;
    }
    file.position(file.size());
    if (!endsWithLine()) {
      append("");
    }
  }

  /** Reads what the file holds; whether it rests on the same. */
  private boolean read(Heading heading, boolean keep) throws IOException {
    file.position(0);
    // Not closed, for that would close the file.
    BufferedReader content =
        new BufferedReader(Channels.newReader(file, StandardCharsets.UTF_8.newDecoder(), -1));
    Heading found = heading(content);
    if (!found.equals(heading) || !keep) {
      return false;
    }
    for (String line = content.readLine(); line != null; line = content.readLine()) {
      result(line).ifPresent(result -> earlier.put(result.report().file(), result));
    }
    return true;
  }

  private Heading heading(BufferedReader content) throws IOException {
    try {
      String line = content.readLine();
      Heading found = line == null ? null : lines.read(line, Heading.class);
      if (found != null && Heading.HOLDS.equals(found.holds())) {
        return found;
      }
      throw otherKind(null);
    } catch (JsonProcessingException | CharacterCodingException other) {
      throw otherKind(other);
    }
  }

  private static IOException otherKind(Exception cause) {
    return new IOException("it is a file of another kind and is left as it is", cause);
  }

  /** Nothing for a line that was cut short or damaged: its workbook is checked again. */
  private Optional<Result> result(String line) {
    try {
      return Optional.ofNullable(lines.read(line, Result.class))
          .filter(result -> result.sha256() != null && result.report() != null);
    } catch (JsonProcessingException | RuntimeException damaged) {
      return Optional.empty();
    }
  }

  private boolean endsWithLine() throws IOException {
    ByteBuffer last = ByteBuffer.allocate(1);
    file.read(last, file.size() - 1);
    return last.get(0) == '\n';
  }

  /**
   * The findings in a workbook: the earlier ones if its content is the same, else new ones. Any
   * thread may call this.
   *
   * @param content the file that holds the workbook
   * @param check finds them, before the course grades them
   */
  public FileReport report(Path workbook, Path content, Supplier<FileReport> check) {
    Optional<String> sha256 = sha256(content);
    Optional<FileReport> known = sha256.flatMap(hash -> earlier(workbook, hash));
    if (known.isPresent()) {
      carriedOver.incrementAndGet();
      hashes.put(workbook, sha256.get());
      return known.get();
    }
    FileReport report = check.get();
    if (sha256.isPresent() && report.problem().isEmpty()) {
      hashes.put(workbook, sha256.get());
      made.put(workbook, new Result(sha256.get(), report));
    }
    return report;
  }

  /** The SHA-256 of a workbook's content, once its report was made and it could be checked. */
  public Optional<String> sha256OfReported(Path workbook) {
    return Optional.ofNullable(hashes.get(workbook));
  }

  /** Nothing where the file cannot be read, which its check will report. */
  private static Optional<String> sha256(Path workbook) {
    try {
      return Files.isRegularFile(workbook) ? Optional.of(Basis.sha256(workbook)) : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<FileReport> earlier(Path workbook, String sha256) {
    return Optional.ofNullable(earlier.get(workbook))
        .filter(result -> result.sha256().equals(sha256))
        .map(Result::report);
  }

  /**
   * Keeps what was newly found in a workbook. What cannot be kept is checked anew the next time;
   * the batch goes on. One thread calls this.
   */
  public void keep(Path workbook) {
    Result result = made.remove(workbook);
    if (result == null || full.isPresent()) {
      return;
    }
    try {
      append(lines.write(result));
    } catch (IOException problem) {
      full = Optional.of(problem);
    } catch (Throwable fault) {
      unkept.put(workbook, Reason.of(fault));
    }
  }

  private void append(String line) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      file.write(bytes);
    }
  }

  /** How many reports were earlier ones. */
  public int carriedOver() {
    return carriedOver.get();
  }

  /** The workbooks whose findings could not be kept though the file takes them, and why. */
  public Map<Path, String> unkept() {
    return unkept;
  }

  /**
   * Lets another check have the file.
   *
   * @throws IOException if the file took not all findings
   */
  @Override
  public void close() throws IOException {
    file.close();
    if (full.isPresent()) {
      throw full.get();
    }
  }
}
