package tenthmark.checker.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.JsonReport;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.rules.Severity;

/** {@code check FILES|FOLDERS}. */
@Command(
    name = "check",
    description = {
      "Checks workbooks (.xlsx, .xlsm, .xls, .ods) and all workbooks in folders.",
      "",
      "Findings go to standard output, one line each, with file, cell, what was found, what was",
      "expected and how to fix it. What could not be checked goes to standard error."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:no errors or warnings (notes do not count)",
      "1:errors or warnings were found",
      "2:a file could not be checked (the others were), or the command line is wrong"
    })
final class CheckCommand implements Callable<Integer> {

  /** How findings are written. */
  enum Format {
    TEXT,
    JSON
  }

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "FILES|FOLDERS", description = "What to check.")
  private List<Path> paths;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text (the default) or json.",
      defaultValue = "text")
  private Format format;

  @Option(
      names = "--profile",
      paramLabel = "PROFILE",
      description =
          "A course's expectations and severities (YAML). \"profile init\" writes one to start from.")
  private Path profile;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Optional<Profile> course =
        profile == null
            ? Optional.of(Profile.NONE)
            : ProfileFile.read(profile, spec.commandLine().getErr());
    return course.map(found -> check(FileChecker.load(found), out)).orElse(Main.FAILED);
  }

  private int check(FileChecker checker, PrintWriter out) {
    List<FileReport> reports = new ArrayList<>();
    for (WorkbookPaths.Entry entry : WorkbookPaths.under(paths)) {
      FileReport report =
          entry
              .problem()
              .map(problem -> FileReport.unchecked(entry.path(), problem))
              .orElseGet(() -> checker.check(entry.path()));
      reports.add(report);
      print(report, out);
    }
    out.println(format == Format.JSON ? JsonReport.write(reports) : TextReport.summary(reports));
    return status(reports);
  }

  private void print(FileReport report, PrintWriter out) {
    if (report.problem().isPresent()) {
      spec.commandLine().getErr().println(TextReport.failure(report));
    } else if (format == Format.TEXT) {
      TextReport.lines(report).forEach(out::println);
    }
  }

  private static int status(List<FileReport> reports) {
    if (reports.stream().anyMatch(report -> report.problem().isPresent())) {
      return Main.FAILED;
    }
    return reports.stream()
            .flatMap(report -> report.findings().stream())
            .anyMatch(finding -> finding.rule().severity() != Severity.NOTE)
        ? 1
        : 0;
  }
}
