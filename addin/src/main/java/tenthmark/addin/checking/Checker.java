package tenthmark.addin.checking;

import com.sun.star.uno.Exception;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tenthmark.addin.checking.CheckerRun.Output;
import tenthmark.addin.menu.Workplace;

/** Checks the open spreadsheet as it is, saved or not. */
public final class Checker {

  private static final String PROFILE = "course.yaml";

  private static final Duration LONGEST_FOR_THE_FILE = Duration.ofSeconds(60);

  private final Workplace workplace;
  private final CheckerProgram program;

  /** The one that the extension ships. */
  public Checker(Workplace workplace, Path extension) {
    this.workplace = workplace;
    this.program = CheckerProgram.in(extension);
  }

  /** The course's profile: a file {@code course.yaml} beside the spreadsheet, if there is one. */
  public Optional<Path> profile() {
    return workplace
        .spreadsheet()
        .file()
        .map(file -> file.resolveSibling(PROFILE))
        .filter(Files::exists);
  }

  /** What is done with the result. */
  @FunctionalInterface
  public interface Next {

    /** Takes what was read and found. */
    void take(CheckedFile file) throws Exception, IOException;
  }

  /** Checks a copy, then goes on with what was read and found, unless the user gives it up. */
  public void check(Next next) throws Exception, IOException {
    program.onCopy(
        workplace,
        FileFormat.ODS,
        "checker.running",
        file -> arguments("check", file),
        (output, copy) -> next.take(result(output, copy, Report::file)));
  }

  /** What is done with what was read. */
  @FunctionalInterface
  public interface Shown {

    /** Takes it. */
    void take(ReadFile file) throws Exception, IOException;
  }

  /** Reads a copy without checking it, then goes on with what was read. */
  public void read(Shown next) throws Exception, IOException {
    program.onCopy(
        workplace,
        FileFormat.ODS,
        "reading.running",
        file -> arguments("reading", file),
        (output, copy) -> next.take(result(output, copy, ReadingReport::file)));
  }

  private List<String> arguments(String command, Path file) {
    List<String> arguments = new ArrayList<>(List.of(command, "--format", "json"));
    arguments.addAll(List.of("--language", workplace.texts().language().code()));
    arguments.addAll(List.of("--threads", "1"));
    arguments.addAll(List.of("--time-limit", Long.toString(LONGEST_FOR_THE_FILE.toSeconds())));
    profile().ifPresent(course -> arguments.addAll(List.of("--profile", course.toString())));
    arguments.add(file.toString());
    return arguments;
  }

  /** What a report says of the file, if there is a whole one. */
  private <T> T result(Output output, Path copy, Function<String, Optional<T>> report) {
    if (output.isDone()) {
      Optional<T> file = report.apply(output.out());
      if (file.isPresent()) {
        return file.get();
      }
    }
    throw output.refusal("checker.failed", copy, workplace.spreadsheet().title());
  }
}
