package tenthmark.checker.cli;

import java.io.IOException;
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
import tenthmark.checker.workbook.UnreadableFileException;
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

  private final Map<Path, String> failures = new LinkedHashMap<>();
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

  /** Writes the reports on one workbook, or says why not; any thread may do that. */
  Optional<String> write(FileReport report) {
    try {
      if (reports.isPresent()) {
        reports.get().write(report);
      }
      return Optional.empty();
    } catch (UnreadableFileException problem) {
      return Optional.of(problem.getMessage());
    } catch (IOException problem) {
      return Optional.of(problem.toString());
    }
  }

  /** Notes that the reports on a workbook could not all be written. */
  void unwritten(Path workbook, String reason) {
    failures.put(workbook, reason);
  }

  /**
   * Writes the reports on all workbooks and says which reports could not be written; whether all
   * could.
   */
  boolean end(List<FileReport> all, PrintWriter err) {
    failures.forEach(
        (file, reason) -> err.println(file + ": its report cannot be written: " + reason));
    try {
      if (reports.isPresent()) {
        reports.get().writeClass(all);
      }
      return failures.isEmpty();
    } catch (IOException problem) {
      err.println(folder + ": the class reports cannot be written: " + problem);
      return false;
    }
  }
}
