package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.output.FolderLock;
import tenthmark.checker.output.KeptFiles;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.output.Tidied;
import tenthmark.checker.output.WrittenReports;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.LeftOut;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.report.TextReport;
import tenthmark.checker.report.Unwritten;
import tenthmark.checker.roster.Register;
import tenthmark.checker.submission.FileKind;
import tenthmark.checker.submission.HandedIn;
import tenthmark.checker.workbook.Reason;
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
  private Optional<FolderLock> lock = Optional.empty();
  private Optional<WrittenReports> written = Optional.empty();

  /** The file in the folder that keeps the results for later checks. */
  Optional<Path> results() {
    return Optional.ofNullable(folder).map(named -> ReportFolder.results(named));
  }

  /**
   * Begins the reports on these workbooks; what already lies in the folder is left out.
   *
   * @param keep whether reports that are there already stay
   * @throws ParameterException if that is all
   */
  List<HandedIn> begin(
      List<HandedIn> entries,
      FileChecker checker,
      Sentences texts,
      Provenance provenance,
      boolean keep) {
    if (folder == null) {
      return entries;
    }
    List<HandedIn> workbooks =
        entries.stream().filter(entry -> !ReportFolder.holds(folder, entry.path())).toList();
    if (workbooks.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "all that is to be checked lies in --out " + folder);
    }
    take(keep);
    List<Path> files =
        workbooks.stream()
            .filter(file -> file.kind() == FileKind.WORKBOOK)
            .map(HandedIn::path)
            .toList();
    reports =
        Optional.of(
            new ReportFolder(folder, files, checker, texts, Optional.of(provenance), written));
    return workbooks;
  }

  private void take(boolean keep) {
    try {
      lock = FolderLock.take(folder);
      if (lock.isEmpty()) {
        throw new ParameterException(
            spec.commandLine(),
            folder
                + ": another check writes its reports there; wait for its end, or name"
                + " another folder");
      }
      written = Optional.of(WrittenReports.in(folder, keep));
    } catch (IOException problem) {
      throw new ParameterException(
          spec.commandLine(), folder + ": cannot be read or written: " + Reason.of(problem));
    }
  }

  /** Lets another check have the folder. */
  void release() throws IOException {
    if (written.isPresent()) {
      written.get().close();
    }
    if (lock.isPresent()) {
      lock.get().close();
    }
  }

  /** Whether a path is the folder or lies in it. */
  boolean holds(Path path) {
    return folder != null && ReportFolder.holds(folder, path);
  }

  /**
   * Writes the reports on one workbook and gives those that cannot be; any thread may do that.
   *
   * @param source the fingerprint of the workbook and of all that its findings rest on
   * @param page whether its page is written now, and not with its grade
   */
  List<Unwritten> write(FileReport report, Path original, Optional<String> source, boolean page) {
    return reports.isPresent() ? reports.get().write(report, original, source, page) : List.of();
  }

  /**
   * Keeps copies of the files that decide grades; whether all could be kept, else says why.
   *
   * @param others beside the profile and what that includes
   */
  boolean keep(Optional<Path> profile, List<Path> others, PrintWriter err) {
    if (folder == null) {
      return true;
    }
    try {
      if (profile.isPresent()) {
        KeptFiles.keep(folder, ProfileReader.files(profile.get()));
      }
      for (Path file : others) {
        KeptFiles.keep(folder, List.of(file));
      }
      return true;
    } catch (IOException problem) {
      err.println(
          TextReport.line(folder, "copies of profile, remarks and roster: " + Reason.of(problem)));
      return false;
    }
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
  boolean end(
      List<FileReport> all,
      Function<Path, Optional<String>> sources,
      Register register,
      LeftOut leftOut,
      PrintWriter err) {
    reports.ifPresent(
        folders -> unwritten(folder, folders.writeClass(all, sources, register, leftOut)));
    failures.forEach(
        (file, missing) ->
            missing.forEach(report -> err.println(TextReport.line(file, report.line()))));
    return failures.values().stream().flatMap(List::stream).noneMatch(Unwritten::incomplete);
  }

  /** Takes away what earlier checks wrote about workbooks that are gone, and says so. */
  void tidy(List<FileReport> all, PrintWriter err) {
    reports.ifPresent(
        folders -> {
          Tidied tidied =
              folders.tidy(all.stream().map(FileReport::file).collect(Collectors.toSet()));
          tidied.gone().forEach(err::println);
          tidied.unwritten().forEach(left -> err.println(TextReport.line(folder, left.line())));
        });
  }

  /** Writes what the newest workbooks give; whether all could be written. */
  boolean grades(
      List<FileReport> all,
      Function<Path, Optional<String>> sources,
      List<Grade> grades,
      List<Remark> unmatched,
      PrintWriter err) {
    List<Unwritten> missing =
        reports
            .map(folders -> folders.writeGrades(all, sources, grades, unmatched))
            .orElse(List.of());
    missing.forEach(report -> err.println(TextReport.line(folder, report.line())));
    return missing.isEmpty();
  }
}
