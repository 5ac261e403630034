package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import tenthmark.checker.grade.Grade;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.report.Excerpt;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Fingerprint;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.roster.Register;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.submission.ArchiveLimits;
import tenthmark.checker.submission.FileKind;
import tenthmark.checker.submission.HandedIn;
import tenthmark.checker.submission.Unpacked;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.measurement.wording.Sentences;

/** {@code check FILES|FOLDERS|ARCHIVES}. */
@Command(
    name = "check",
    description = {
      "Checks workbooks (.xlsx, .xlsm, .xls, .ods) and all workbooks in folders and in zip"
          + " archives, in whatever folders they lie there.",
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
    exitCodeList = {ExitStatus.CLEAN, ExitStatus.FOUND, ExitStatus.FAILED, ExitStatus.WRONG},
    footer = {
      "  tenthmark-checker check ada.ods",
      "  tenthmark-checker check --profile course.yaml --out feedback handed-in",
      "  tenthmark-checker check --profile course.yaml --out feedback section-1.zip section-2.zip",
      "  tenthmark-checker check --changed-only --out feedback handed-in",
      "  tenthmark-checker check --quiet --time-limit 5 --threads 1 handed-in",
      "  tenthmark-checker check --format json handed-in",
      "  tenthmark-checker check --language de --out feedback handed-in"
    })
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "FILES|FOLDERS|ARCHIVES", description = "What to check.")
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
          "A course's expectations and severities (YAML). \"profile init\" writes one to start"
              + " from.")
  private Path profile;

  @Mixin private LanguageOption language;

  @Mixin private OutOption out;

  @Mixin private GradeOptions grading;

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
          "After so much processor time a file is given up and reported, and the others go on"
              + " (default: ${DEFAULT-VALUE}).")
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
              + " the others; so a batch that was stopped goes on where it stood. What a profile"
              + " makes of the rules is applied to results that were kept; all are checked if the"
              + " version is another, or what the profile expects. Reports that are there already"
              + " stay.")
  private boolean changedOnly;

  private LeftOut leftOut = LeftOut.NOTHING;

  /**
   * Where findings come from.
   *
   * @param of the report on a workbook
   * @param source the fingerprint of a workbook and of all that its findings rest on, if known
   * @param keep keeps the findings in a workbook for later checks
   */
  private record Findings(
      Function<HandedIn, FileReport> of,
      Function<Path, Optional<String>> source,
      Consumer<Path> keep) {}

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
    boolean readable =
        course.isPresent()
            && grading.read(
                course.get().administration(),
                RuleCatalogue.load().ids(),
                spec.commandLine().getErr());
    try {
      return readable ? check(course.get()) : Main.FAILED;
    } finally {
      out.release();
    }
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
    try (Unpacked archives = Unpacked.in(ArchiveLimits.DEFAULT)) {
      List<HandedIn> found =
          out.begin(
              submissions(archives),
              checker,
              texts,
              Provenances.now(profile, grading.remarks()),
              changedOnly);
      found.stream().filter(file -> file.kind() == FileKind.STRAY).forEach(this::notChecked);
      Optional<Register> register = grading.register(found, course.administration().submissions());
      List<HandedIn> files =
          found.stream().filter(file -> file.kind() == FileKind.WORKBOOK).toList();
      Optional<Path> results = results();
      return results.isPresent()
          ? check(files, checker, texts, register, results.get())
          : check(
              files,
              new Findings(
                  file -> checker.check(file.path(), file.content()),
                  file -> Optional.empty(),
                  file -> {}),
              texts,
              register);
    }
  }

  private List<Path> profileFiles() throws IOException {
    return profile == null ? List.of() : ProfileReader.files(profile);
  }

  /** What was handed in, but for the other files that this command line names. */
  private List<HandedIn> submissions(Unpacked archives) throws IOException {
    Set<Object> named =
        Stream.of(profileFiles().stream(), Stream.ofNullable(state), grading.files().stream())
            .flatMap(Function.identity())
            .map(WorkbookPaths::identity)
            .collect(Collectors.toSet());
    WorkbookPaths found = new WorkbookPaths(archives);
    List<HandedIn> files =
        found.under(paths).stream()
            .filter(
                file ->
                    file.kind() != FileKind.STRAY
                        || !named.contains(WorkbookPaths.identity(file.path())))
            .toList();
    List<Path> skipped = found.skipped().stream().filter(folder -> !out.holds(folder)).toList();
    skipped.forEach(
        folder ->
            spec.commandLine()
                .getErr()
                .println(TextReport.line(folder, "skipped: it holds reports of a check")));
    leftOut =
        new LeftOut(
            skipped,
            files.stream()
                .filter(file -> file.kind() == FileKind.STRAY && !out.holds(file.path()))
                .map(HandedIn::path)
                .toList());
    return files;
  }

  private int check(
      List<HandedIn> files,
      FileChecker checker,
      Sentences texts,
      Optional<Register> register,
      Path results) {
    PrintWriter err = spec.commandLine().getErr();
    Basis basis = Basis.of(new Version().getVersion()[0], checker.profile().course());
    try (EarlierResults earlier =
        EarlierResults.open(results, basis, checker.rules(), changedOnly)) {
      Findings findings =
          new Findings(
              file -> checker.graded(report(file, checker, earlier)),
              file -> earlier.sha256OfReported(file).map(hash -> Fingerprint.of(hash, basis)),
              earlier::keep);
      int status = check(files, findings, texts, register);
      if (changedOnly) {
        err.println(earlier.carriedOver() + " unchanged since the last check");
      }
      earlier
          .unkept()
          .forEach(
              (file, reason) ->
                  err.println(TextReport.line(file, "its results cannot be kept: " + reason)));
      return earlier.unkept().isEmpty() ? status : Main.FAILED;
    } catch (IOException problem) {
      err.println(results + ": cannot be read or written: " + Reason.of(problem));
      return Main.FAILED;
    }
  }

  private void notChecked(HandedIn stray) {
    spec.commandLine().getErr().println(stray.path() + ": not checked: not a workbook");
  }

  private static FileReport report(HandedIn file, FileChecker checker, EarlierResults earlier) {
    return earlier.report(
        file.path(), file.content(), () -> checker.examine(file.path(), file.content()));
  }

  private int check(
      List<HandedIn> files, Findings findings, Sentences texts, Optional<Register> register) {
    List<Job> jobs = files.stream().map(file -> job(file, findings, register.isEmpty())).toList();
    CheckOutput output = output(jobs.size(), texts);
    PrintWriter err = spec.commandLine().getErr();
    new Batch(threads)
        .run(
            jobs,
            finished -> {
              FileReport report = finished.report();
              output.file(report);
              out.unwritten(report.file(), finished.unwritten());
              findings.keep().accept(report.file());
            });
    boolean printed = output.end(leftOut);
    boolean written =
        out.end(output.reports(), findings.source(), register.orElse(Register.NONE), leftOut, err);
    written &= out.keep(Optional.ofNullable(profile), grading.files(), err);
    if (register.isPresent()) {
      List<Grade> grades = grading.grades(register.get(), output.reports());
      grading.report(register.get(), grades, err);
      written &=
          out.grades(
              output.reports(), findings.source(), grades, grading.unmatched(register.get()), err);
    }
    out.tidy(output.reports(), err);
    return printed && written ? status(output.reports()) : Main.FAILED;
  }

  private Job job(HandedIn file, Findings findings, boolean page) {
    return new Job(
        file.path(),
        () ->
            file.problem()
                .map(problem -> FileReport.unchecked(file.path(), problem))
                .orElseGet(() -> findings.of().apply(file)),
        report -> out.write(report, file.content(), findings.source().apply(file.path()), page));
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
        || report.toMend().stream().anyMatch(finding -> finding.rule().severity() != Severity.NOTE);
  }
}
