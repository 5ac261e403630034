package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.batch.Batch;
import tenthmark.checker.batch.Finished;
import tenthmark.checker.batch.Job;
import tenthmark.checker.output.ReadingFolder;
import tenthmark.checker.page.ReadingPage;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.ReadingJson;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.submission.ArchiveLimits;
import tenthmark.checker.submission.FileKind;
import tenthmark.checker.submission.HandedIn;
import tenthmark.checker.submission.Unpacked;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;
import tenthmark.measurement.wording.Sentences;

/** {@code reading FILES|FOLDERS}. */
@Command(
    name = "reading",
    description = {
      "Shows how workbooks are read, without checking them: what every cell is taken for, and what"
          + " is not read, with the reason.",
      "",
      "Prints a line for each file and each reason. With --out it writes a page for each workbook"
          + " that draws its sheets as grids. What is read wrongly can be put right in the profile,"
          + " in its sections headings and tables."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeList = {
      "0:every number was understood",
      "1:something was not read",
      "2:a file could not be read (the others were)",
      ExitStatus.WRONG
    },
    footer = {
      "  tenthmark-checker reading ada.ods",
      "  tenthmark-checker reading --out readings handed-in",
      "  tenthmark-checker reading --profile course.yaml --out readings handed-in",
      "  tenthmark-checker reading --format json ada.ods"
    })
final class ReadingCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "FILES|FOLDERS", description = "What to read.")
  private List<Path> paths;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Writes a page for each workbook into this folder.")
  private Path out;

  @Option(
      names = "--profile",
      paramLabel = "PROFILE",
      description = "A course's headings and tables (YAML), by which workbooks are read.")
  private Path profile;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text (the default) or json, which says of every cell what it is taken for.",
      defaultValue = "text")
  private CheckOutput.Format format;

  @Mixin private LanguageOption language;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "How many files are read at a time; as many as there are processors by default.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Option(
      names = "--time-limit",
      paramLabel = "SECONDS",
      description =
          "After so much processor time a file is given up and reported, and the others go on"
              + " (default: ${DEFAULT-VALUE}).")
  private int timeLimit = Math.toIntExact(Limits.DEFAULT.time().toSeconds());

  private final Map<Path, ReadingJson.File> read = new ConcurrentHashMap<>();

  @Override
  public Integer call() throws IOException {
    if (threads < 1 || timeLimit < 1) {
      throw new ParameterException(
          spec.commandLine(), "--threads and --time-limit must be at least 1");
    }
    Optional<Profile> course =
        profile == null
            ? Optional.of(Profile.NONE)
            : ProfileFile.read(profile, spec.commandLine().getErr());
    return course.isEmpty() ? Main.FAILED : read(course.get());
  }

  private int read(Profile course) throws IOException {
    try (Unpacked archives = Unpacked.in(ArchiveLimits.DEFAULT)) {
      return read(course, new WorkbookPaths(archives).under(paths));
    }
  }

  private int read(Profile course, List<HandedIn> found) {
    Limits limits = Limits.DEFAULT.withTime(Duration.ofSeconds(timeLimit));
    FileChecker checker = FileChecker.load(course, limits);
    Sentences texts = CheckerTexts.in(language.language().orElse(course.language()));
    List<HandedIn> entries =
        found.stream().filter(file -> file.kind() == FileKind.WORKBOOK).toList();
    Optional<ReadingFolder> folder =
        Optional.ofNullable(out)
            .map(named -> new ReadingFolder(named, entries.stream().map(HandedIn::path).toList()));
    List<Finished> all = new ArrayList<>();
    new Batch(threads)
        .run(
            entries.stream().map(entry -> job(entry, checker, texts, folder)).toList(),
            finished -> {
              all.add(finished);
              tell(finished, texts);
            });
    if (format == CheckOutput.Format.JSON) {
      spec.commandLine().getOut().println(json(all));
    }
    return status(all);
  }

  private Job job(
      HandedIn entry, FileChecker checker, Sentences texts, Optional<ReadingFolder> folder) {
    Path file = entry.path();
    AtomicReference<String> page = new AtomicReference<>();
    return new Job(
        file,
        () ->
            entry
                .problem()
                .map(problem -> FileReport.unchecked(file, problem))
                .orElseGet(
                    () ->
                        checker.read(
                            file,
                            entry.content(),
                            inspection -> {
                              keep(file, inspection, texts);
                              folder.ifPresent(
                                  any -> page.set(ReadingPage.of(name(file), inspection, texts)));
                            })),
        report ->
            folder
                .map(to -> to.write(file, Optional.ofNullable(page.getAndSet(null))))
                .orElse(List.of()));
  }

  private void keep(Path file, Inspection inspection, Sentences texts) {
    if (format == CheckOutput.Format.JSON) {
      read.put(file, ReadingJson.File.of(file.toString(), inspection, texts));
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  private void tell(Finished finished, Sentences texts) {
    FileReport report = finished.report();
    PrintWriter err = spec.commandLine().getErr();
    if (report.problem().isPresent()) {
      err.println(TextReport.unread(report));
    } else if (format == CheckOutput.Format.TEXT) {
      new TextReport(texts).reading(report).forEach(spec.commandLine().getOut()::println);
    }
    finished
        .unwritten()
        .forEach(missing -> err.println(TextReport.line(report.file(), missing.line())));
  }

  private String json(List<Finished> all) {
    return ReadingJson.write(
        all.stream()
            .map(Finished::report)
            .map(
                report ->
                    report
                        .problem()
                        .map(problem -> ReadingJson.File.unread(report.file().toString(), problem))
                        .orElseGet(() -> read.get(report.file())))
            .toList());
  }

  private static int status(List<Finished> all) {
    if (all.stream().anyMatch(ReadingCommand::hasFailed)) {
      return Main.FAILED;
    }
    return all.stream()
            .map(finished -> finished.report().contents())
            .anyMatch(
                contents -> contents.nothingWasRead() || contents.coverage().numbersNotRead() > 0)
        ? 1
        : 0;
  }

  private static boolean hasFailed(Finished finished) {
    return finished.report().problem().isPresent() || !finished.unwritten().isEmpty();
  }
}
