package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.batch.Basis;
import tenthmark.checker.batch.Batch;
import tenthmark.checker.batch.EarlierResults;
import tenthmark.checker.batch.Job;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.report.Excerpt;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.measurement.wording.Sentences;

/** {@code check FILES|FOLDERS}. */
@Command(
    name = "check",
    description = {
      "Checks workbooks (.xlsx, .xlsm, .xls, .ods) and all workbooks in folders.",
      "",
      "Results go to standard output: one line for each finding, with file, cell, what was found,"
          + " what was expected and how to fix it, of one rule for at most "
          + Excerpt.MOST
          + " in a file; one line for each file; and one for all. What"
          + " could not be checked goes to standard error. Results stand in the order of the file"
          + " names, however many files are checked at a time."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeList = {ExitStatus.CLEAN, ExitStatus.FOUND, ExitStatus.FAILED},
    footer = {
      "  tenthmark-checker check ada.ods",
      "  tenthmark-checker check --profile course.yaml --out feedback handed-in",
      "  tenthmark-checker check --changed-only --out feedback handed-in",
      "  tenthmark-checker check --quiet --time-limit 5 --threads 1 handed-in",
      "  tenthmark-checker check --format json handed-in",
      "  tenthmark-checker check --language de --out feedback handed-in"
    })
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "FILES|FOLDERS", description = "What to check.")
  private List<Path> paths;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text (the default) or json.",
      defaultValue = "text")
  private CheckOutput.Format format;

  @Option(
      names = "--quiet",
      description = "Prints the summary of all files only; no line for each finding or file.")
  private boolean quiet;

  @Option(
      names = "--profile",
      paramLabel = "PROFILE",
      description =
          "A course's expectations and severities (YAML). \"profile init\" writes one to start from.")
  private Path profile;

  @Mixin private LanguageOption language;

  @Mixin private OutOption out;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "How many files are checked at a time; as many as there are processors by default. The"
              + " results are the same.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Option(
      names = "--time-limit",
      paramLabel = "SECONDS",
      description =
          "After so long a file is given up and reported, and the others go on (default:"
              + " ${DEFAULT-VALUE}).")
  private int timeLimit = Math.toIntExact(Limits.DEFAULT.time().toSeconds());

  @Option(
      names = "--state",
      paramLabel = "FILE",
      description =
          "Keeps the results in this file for a later --changed-only; with --out a file in DIR by"
              + " default.")
  private Path state;

  @Option(
      names = "--changed-only",
      description =
          "Takes over the results that were kept of workbooks whose content is the same, and checks"
              + " the others; so a batch that was stopped goes on where it stood. All are checked if"
              + " the version or the profile is another.")
  private boolean changedOnly;

  @Override
  public Integer call() throws IOException {
    requirePositive("--threads", threads);
    requirePositive("--time-limit", timeLimit);
    if (changedOnly && results().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "--changed-only needs --out DIR or --state FILE");
    }
    Optional<Profile> course =
        profile == null
            ? Optional.of(Profile.NONE)
            : ProfileFile.read(profile, spec.commandLine().getErr());
    return course.isEmpty() ? Main.FAILED : check(course.get());
  }

  /** Where results are kept, if they are. */
  private Optional<Path> results() {
    return Optional.ofNullable(state).or(out::results);
  }

  private void requirePositive(String option, int number) {
    if (number < 1) {
      throw new ParameterException(
          spec.commandLine(), option + " is " + number + " but must be at least 1");
    }
  }

  private int check(Profile course) throws IOException {
    Limits limits = Limits.DEFAULT.withTime(Duration.ofSeconds(timeLimit));
    FileChecker checker = FileChecker.load(course, limits);
    Sentences texts = CheckerTexts.in(language.language().orElse(course.language()));
    List<WorkbookPaths.Entry> entries = out.begin(WorkbookPaths.under(paths), checker, texts);
    Optional<Path> results = results();
    return results.isPresent()
        ? check(entries, checker, texts, results.get())
        : check(entries, checker::check, texts, report -> {});
  }

  private int check(
      List<WorkbookPaths.Entry> entries, FileChecker checker, Sentences texts, Path results)
      throws IOException {
    Basis basis = Basis.of(new Version().getVersion()[0], Optional.ofNullable(profile));
    try (EarlierResults earlier =
        EarlierResults.open(results, basis, checker.rules(), changedOnly)) {
      int status =
          check(entries, file -> earlier.report(file, checker::check), texts, earlier::keep);
      if (changedOnly) {
        spec.commandLine()
            .getErr()
            .println(earlier.carriedOver() + " unchanged since the last check");
      }
      return status;
    } catch (IOException problem) {
      spec.commandLine()
          .getErr()
          .println(results + ": cannot be read or written: " + Reason.of(problem));
      return Main.FAILED;
    }
  }

  private int check(
      List<WorkbookPaths.Entry> entries,
      Function<Path, FileReport> checker,
      Sentences texts,
      Consumer<FileReport> keep) {
    List<Job> jobs = entries.stream().map(entry -> job(entry, checker)).toList();
    CheckOutput output = output(jobs.size(), texts);
    PrintWriter err = spec.commandLine().getErr();
    new Batch(threads)
        .run(
            jobs,
            finished -> {
              FileReport report = finished.report();
              output.file(report);
              out.unwritten(report.file(), finished.unwritten());
              keep.accept(report);
            });
    boolean printed = output.end();
    boolean written = out.end(output.reports(), err);
    return printed && written ? status(output.reports()) : Main.FAILED;
  }

  private Job job(WorkbookPaths.Entry entry, Function<Path, FileReport> checker) {
    Path file = entry.path();
    return new Job(
        file,
        () ->
            entry
                .problem()
                .map(problem -> FileReport.unchecked(file, problem))
                .orElseGet(() -> checker.apply(file)),
        out::write);
  }

  private CheckOutput output(int files, Sentences texts) {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Progress> progress =
        Terminal.find().filter(console -> !quiet).map(console -> new Progress(err, files));
    return new CheckOutput(format, quiet, texts, spec.commandLine().getOut(), err, progress);
  }

  private static int status(List<FileReport> reports) {
    if (reports.stream().anyMatch(report -> report.problem().isPresent())) {
      return Main.FAILED;
    }
    return reports.stream().anyMatch(CheckCommand::isFaulty) ? 1 : 0;
  }

  /** A workbook of which nothing was read is never clean, whatever a profile makes of the rules. */
  private static boolean isFaulty(FileReport report) {
    return report.contents().nothingWasRead()
        || report.findings().stream()
            .anyMatch(finding -> finding.rule().severity() != Severity.NOTE);
  }
}
