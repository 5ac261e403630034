package tenthmark.checker.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.RuleCatalogue;

/**
 * The results of earlier checks in a file: a line for what they rest on, then one for each workbook
 * that was checked. A line is added as soon as a workbook is done, so that a batch that was stopped
 * goes on where it stood.
 */
public final class EarlierResults implements AutoCloseable {

  private record Heading(String holds, Basis basis) {

    private static final String HOLDS = "results of tenthmark-checker";

    static Heading of(Basis basis) {
      return new Heading(HOLDS, basis);
    }
  }

  private record Result(String sha256, FileReport report) {}

  private final Path file;
  private final Heading heading;
  private final ResultLines lines;
  private final Map<Path, Result> earlier;
  private final Map<Path, Result> results;
  private final Map<Path, String> hashes = new ConcurrentHashMap<>();
  private BufferedWriter writer;
  private int carriedOver;

  /** Why a result could not be kept; then none after it is. */
  private IOException failure;

  private EarlierResults(Path file, Heading heading, ResultLines lines, Map<Path, Result> earlier) {
    this.file = file;
    this.heading = heading;
    this.lines = lines;
    this.earlier = earlier;
    this.results = new TreeMap<>(earlier);
  }

  /**
   * Opens a file of results, or begins one.
   *
   * @param keep whether earlier results may be used again; if not, all begins anew
   * @throws IOException if the file cannot be read or written, or is some other file
   */
  public static EarlierResults open(Path file, Basis basis, RuleCatalogue rules, boolean keep)
      throws IOException {
    Heading heading = Heading.of(basis);
    ResultLines lines = new ResultLines(rules);
    boolean usable = Files.exists(file) && Files.size(file) > 0 && begins(file, heading, lines);
    EarlierResults results =
        new EarlierResults(file, heading, lines, usable && keep ? results(file, lines) : Map.of());
    results.write();
    return results;
  }

  private static boolean begins(Path file, Heading heading, ResultLines lines) throws IOException {
    try (BufferedReader content = Files.newBufferedReader(file)) {
      Heading found = lines.read(content.readLine(), Heading.class);
      if (found != null && Heading.HOLDS.equals(found.holds())) {
        return found.equals(heading);
      }
      throw otherKind(null);
    } catch (JsonProcessingException | CharacterCodingException other) {
      throw otherKind(other);
    }
  }

  private static IOException otherKind(Exception cause) {
    return new IOException("it is a file of another kind and is left as it is", cause);
  }

  private static Map<Path, Result> results(Path file, ResultLines lines) throws IOException {
    Map<Path, Result> results = new HashMap<>();
    try (BufferedReader content = Files.newBufferedReader(file)) {
      content.readLine();
      for (String line = content.readLine(); line != null; line = content.readLine()) {
        result(line, lines).ifPresent(result -> results.put(result.report().file(), result));
      }
    }
    return results;
  }

  /** Nothing for the last line of a batch that was stopped: its workbook is checked again. */
  private static Optional<Result> result(String line, ResultLines lines) {
    try {
      return Optional.of(lines.read(line, Result.class));
    } catch (JsonProcessingException cutShort) {
      return Optional.empty();
    }
  }

  /**
   * The report on a workbook: the earlier one if its content is the same, else a new one. Any
   * thread may call this.
   *
   * @param content the file that holds the workbook
   */
  public FileReport report(Path workbook, Path content, Supplier<FileReport> check) {
    Optional<String> sha256 = sha256(content);
    sha256.ifPresent(hash -> hashes.put(workbook, hash));
    return sha256.flatMap(hash -> earlier(workbook, hash)).map(Result::report).orElseGet(check);
  }

  /** Nothing where the file cannot be read, which its check will report. */
  private static Optional<String> sha256(Path workbook) {
    try {
      return Files.isRegularFile(workbook) ? Optional.of(Basis.sha256(workbook)) : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<Result> earlier(Path workbook, String sha256) {
    return Optional.ofNullable(earlier.get(workbook))
        .filter(result -> result.sha256().equals(sha256));
  }

  /** Keeps a report that was made here, if its workbook was checked. One thread calls this. */
  public void keep(FileReport report) {
    String sha256 = hashes.remove(report.file());
    if (sha256 == null || report.problem().isPresent()) {
      return;
    }
    if (earlier(report.file(), sha256).isPresent()) {
      carriedOver++;
      return;
    }
    Result result = new Result(sha256, report);
    results.put(report.file(), result);
    if (failure == null) {
      append(lines.write(result));
    }
  }

  /** What cannot be kept is checked anew the next time; the batch goes on. */
  private void append(String line) {
    try {
      writer.write(line);
      writer.newLine();
      writer.flush();
    } catch (IOException problem) {
      failure = problem;
    }
  }

  /** How many reports were earlier ones. */
  public int carriedOver() {
    return carriedOver;
  }

  /** Writes all lines anew, in the order of the workbooks, and stays ready for further ones. */
  private void write() throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path whole = file.resolveSibling(".part-" + UUID.randomUUID());
    List<String> content = new ArrayList<>(List.of(lines.write(heading)));
    results.values().forEach(result -> content.add(lines.write(result)));
    try {
      Files.write(whole, content);
      Files.move(whole, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(whole);
    }
    writer = Files.newBufferedWriter(file, StandardOpenOption.APPEND);
  }

  /**
   * Ends the file.
   *
   * @throws IOException if a result could not be kept
   */
  @Override
  public void close() throws IOException {
    writer.close();
    if (failure != null) {
      throw failure;
    }
    write();
    writer.close();
  }
}
