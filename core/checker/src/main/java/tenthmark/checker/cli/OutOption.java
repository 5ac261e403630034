package tenthmark.checker.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.report.Unwritten;
import tenthmark.measurement.wording.Sentences;

/** {@code --out DIR}: the reports that are written into a folder, if one is given. */
final class OutOption {

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Writes reports into this folder: for each workbook a page for its student and an"
              + " annotated copy, for the class a page (class.html), a table for a gradebook"
              + " (gradebook.csv), findings.json and junit.xml. Workbooks that lie in it, or in"
              + " such a folder of an earlier check, are not checked.")
  private Path folder;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  private final Map<Path, List<Unwritten>> failures = new LinkedHashMap<>();
  private Optional<ReportFolder> reports = Optional.empty();

  /** The file in the folder that keeps the results for later checks. */
  Optional<Path> results() {
    return Optional.ofNullable(folder).map(named -> ReportFolder.results(named));
  }

  /**
   * Begins the reports on these workbooks; what already lies in the folder is left out.
   *
   * @throws ParameterException if that is all
   */
  List<WorkbookPaths.Entry> begin(
      List<WorkbookPaths.Entry> entries, FileChecker checker, Sentences texts) {
    if (folder == null) {
      return entries;
    }
    List<WorkbookPaths.Entry> workbooks =
        entries.stream().filter(entry -> !ReportFolder.holds(folder, entry.path())).toList();
    if (workbooks.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "all that is to be checked lies in --out " + folder);
    }
    List<Path> files = workbooks.stream().map(WorkbookPaths.Entry::path).toList();
    reports = Optional.of(new ReportFolder(folder, files, checker, texts));
    return workbooks;
  }

  /** Writes the reports on one workbook and gives those that cannot be; any thread may do that. */
  List<Unwritten> write(FileReport report) {
    return reports.isPresent() ? reports.get().write(report) : List.of();
  }

  /** Notes that reports on a workbook could not be written. */
  void unwritten(Path workbook, List<Unwritten> missing) {
    if (!missing.isEmpty()) {
      failures.put(workbook, missing);
    }
  }

  /**
   * Writes the reports on all workbooks and says which reports could not be written; whether the
   * check is complete without them.
   */
  boolean end(List<FileReport> all, PrintWriter err) {
    reports.ifPresent(folders -> unwritten(folder, folders.writeClass(all)));
    failures.forEach(
        (file, missing) ->
            missing.forEach(report -> err.println(TextReport.line(file, report.line()))));
    return failures.values().stream().flatMap(List::stream).noneMatch(Unwritten::incomplete);
  }
}
