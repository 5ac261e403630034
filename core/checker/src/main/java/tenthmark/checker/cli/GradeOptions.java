package tenthmark.checker.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.grade.GradeTableColumns;
import tenthmark.checker.profile.Administration;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.remark.RemarksFile;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.roster.Attempt;
import tenthmark.checker.roster.Participant;
import tenthmark.checker.roster.Register;
import tenthmark.checker.roster.Roster;
import tenthmark.checker.submission.FileKind;
import tenthmark.checker.submission.HandedIn;
import tenthmark.checker.submission.Naming;
import tenthmark.checker.workbook.Reason;

/** {@code --roster} and {@code --remarks}: who is in the course, and the instructor's last word. */
final class GradeOptions {

  @Option(
      names = "--roster",
      paramLabel = "FILE",
      description =
          "The students of the course, a table (CSV) with a row for each; the profile says what its"
              + " columns are called. Names absentees, files of others and files that are no"
              + " workbooks, and with --out writes students.html, grades.csv and an archive for"
              + " each section.")
  private Path roster;

  @Option(
      names = "--remarks",
      paramLabel = "FILE",
      description =
          "The instructor's last word, a table (CSV) with the columns student, rule, cell, points"
              + " and because: what a finding costs a student instead (0 waives it), or without a"
              + " rule a deduction of its own.")
  private Path remarks;

  private Optional<Roster> students = Optional.empty();
  private List<Remark> decisions = List.of();
  private GradeTableColumns columns = GradeTableColumns.STANDARD;

  /** The files that are named, which are no submissions. */
  List<Path> files() {
    return Stream.of(Optional.ofNullable(roster), Optional.ofNullable(remarks))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The file with the instructor's last word, if one is named. */
  Optional<Path> remarks() {
    return Optional.ofNullable(remarks);
  }

  /** Reads the files; whether all can be used, and if not, prints why. */
  boolean read(Administration administration, Set<String> rules, PrintWriter err) {
    columns = administration.grades();
    Path file = roster;
    try {
      if (roster != null) {
        students = Optional.of(Roster.read(roster, administration.roster()));
      }
      file = remarks;
      if (remarks != null) {
        decisions = RemarksFile.read(remarks, rules);
      }
      return true;
    } catch (IOException problem) {
      err.println(file + ": " + Reason.of(problem));
      return false;
    }
  }

  /** Whether anything tells one student's files from another's. */
  private boolean tellsStudents(Naming naming) {
    return students.isPresent() || !decisions.isEmpty() || !naming.patterns().isEmpty();
  }

  /** Who handed in what; nothing where nothing tells students apart. */
  Optional<Register> register(List<HandedIn> files, Naming naming) {
    return tellsStudents(naming)
        ? Optional.of(
            Register.of(
                students,
                attempts(files, FileKind.WORKBOOK, naming),
                attempts(files, FileKind.STRAY, naming)))
        : Optional.empty();
  }

  private static List<Attempt> attempts(List<HandedIn> files, FileKind kind, Naming naming) {
    return files.stream()
        .filter(file -> file.kind() == kind)
        .map(file -> new Attempt(file.path(), naming.read(file.path(), file.base())))
        .toList();
  }

  /** What the newest workbooks give. */
  List<Grade> grades(Register register, List<FileReport> reports) {
    Map<Path, FileReport> byFile = new HashMap<>();
    reports.forEach(report -> byFile.put(report.file(), report));
    return register.participants().stream()
        .map(one -> Grade.of(one, byFile, decisions, columns))
        .toList();
  }

  /** Remarks on students whom nobody is. */
  List<Remark> unmatched(Register register) {
    return decisions.stream()
        .filter(
            remark ->
                register.participants().stream()
                    .map(Participant::student)
                    .noneMatch(remark::isAbout))
        .toList();
  }

  /** Says who is missing, and which remarks are stale. */
  void report(Register register, List<Grade> grades, PrintWriter err) {
    List<String> lines = new ArrayList<>();
    if (students.isPresent()) {
      for (Participant absent : register.absent()) {
        lines.add(
            roster + ": " + absent.student().shown() + " handed in no workbook" + sent(absent));
      }
      register.participants().stream()
          .filter(one -> !one.listed())
          .forEach(
              one -> lines.add(roster + ": " + one.student().shown() + " is not on the roster"));
    }
    grades.stream()
        .filter(grade -> grade.participant().severalAtOnce())
        .forEach(
            grade ->
                lines.add(
                    grade.participant().student().shown()
                        + " handed in several workbooks at once, none counts: "
                        + grade.reason()));
    grades.stream()
        .flatMap(grade -> grade.stale().stream())
        .forEach(remark -> lines.add(stale(remark) + "the newest workbook has no such finding"));
    unmatched(register).forEach(remark -> lines.add(stale(remark) + "there is no such student"));
    lines.forEach(err::println);
  }

  private String stale(Remark remark) {
    return remarks
        + ": row "
        + remark.row()
        + ": the remark on "
        + remark.student()
        + " is stale: ";
  }

  private static String sent(Participant absent) {
    return absent.strays().isEmpty()
        ? ""
        : " but "
            + String.join(
                ", ",
                absent.strays().stream()
                    .map(stray -> stray.file().getFileName().toString())
                    .toList());
  }
}
