package tenthmark.checker.grade;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tenthmark.checker.classroom.AttemptComparison;
import tenthmark.checker.remark.Remark;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.roster.Attempt;
import tenthmark.checker.roster.Participant;
import tenthmark.checker.rules.Finding;
import tenthmark.measurement.rounding.Decimals;

/**
 * What a student's newest workbook gives, the instructor's remarks applied last.
 *
 * @param participant who handed it in
 * @param status whether there is a score, or why not
 * @param reason more about the status, in one line; may be empty
 * @param report on the newest workbook, if there is one
 * @param deductions of which the points lost are the sum
 * @param stale remarks on findings that the newest workbook does not have
 * @param maximum the score without deductions, if the course gives scores
 * @param comparison with the attempt before, if there is one
 */
public record Grade(
    Participant participant,
    GradeStatus status,
    String reason,
    Optional<FileReport> report,
    List<Deduction> deductions,
    List<Remark> stale,
    Optional<BigDecimal> maximum,
    Optional<AttemptComparison> comparison) {

  /** Copies the lists. */
  public Grade {
    deductions = List.copyOf(deductions);
    stale = List.copyOf(stale);
  }

  /**
   * The grade of a participant.
   *
   * @param reports on all workbooks, by what they are called
   * @param remarks all of the instructor's
   */
  public static Grade of(
      Participant participant,
      Map<Path, FileReport> reports,
      List<Remark> remarks,
      GradeTableColumns columns) {
    Optional<FileReport> report = report(participant.newest(), reports);
    GradeStatus status = status(participant, report);
    List<Remark> own =
        remarks.stream().filter(remark -> remark.isAbout(participant.student())).toList();
    List<Finding> findings = report.map(FileReport::findings).orElse(List.of());
    return new Grade(
        participant,
        status,
        reason(participant, status, report),
        report,
        deductions(findings, own),
        own.stream()
            .filter(remark -> !remark.isOwn() && findings.stream().noneMatch(remark::isAbout))
            .toList(),
        columns.maximum().map(Decimals::shortest),
        report(participant.before(), reports)
            .flatMap(earlier -> report.map(later -> AttemptComparison.of(earlier, later))));
  }

  private static Optional<FileReport> report(
      Optional<Attempt> attempt, Map<Path, FileReport> reports) {
    return attempt.map(Attempt::file).map(reports::get);
  }

  private static GradeStatus status(Participant participant, Optional<FileReport> report) {
    if (participant.severalAtOnce()) {
      return GradeStatus.SEVERAL;
    }
    if (report.isPresent()) {
      return report.get().problem().isPresent() ? GradeStatus.UNCHECKED : GradeStatus.CHECKED;
    }
    return participant.strays().isEmpty() ? GradeStatus.NOTHING : GradeStatus.NO_WORKBOOK;
  }

  private static String reason(
      Participant participant, GradeStatus status, Optional<FileReport> report) {
    return switch (status) {
      case CHECKED, NOTHING -> "";
      case UNCHECKED -> report.flatMap(FileReport::problem).orElse("");
      case NO_WORKBOOK -> names(participant.strays());
      case SEVERAL -> names(participant.attempts());
    };
  }

  private static String names(List<Attempt> files) {
    return files.stream()
        .map(file -> file.file().getFileName().toString())
        .collect(Collectors.joining(", "));
  }

  /** Each finding that costs something or has a remark, then the instructor's own deductions. */
  private static List<Deduction> deductions(List<Finding> findings, List<Remark> remarks) {
    List<Deduction> deductions = new ArrayList<>();
    for (Finding finding : findings) {
      Optional<Remark> remark = last(finding, remarks);
      if (finding.points() > 0 || remark.isPresent()) {
        deductions.add(
            new Deduction(
                Optional.of(finding),
                remark.map(Remark::points).orElse(Decimals.shortest(finding.points())),
                remark));
      }
    }
    remarks.stream()
        .filter(Remark::isOwn)
        .forEach(
            remark ->
                deductions.add(
                    new Deduction(Optional.empty(), remark.points(), Optional.of(remark))));
    return deductions;
  }

  /** Of several remarks on a finding the one that names its cell, else the last. */
  private static Optional<Remark> last(Finding finding, List<Remark> remarks) {
    List<Remark> all = remarks.stream().filter(remark -> remark.isAbout(finding)).toList();
    return all.stream()
        .filter(remark -> remark.cell().isPresent())
        .reduce((one, later) -> later)
        .or(() -> all.stream().reduce((one, later) -> later));
  }

  /** What all deductions are together, if the newest workbook was checked. */
  public Optional<BigDecimal> pointsLost() {
    return status == GradeStatus.CHECKED
        ? Optional.of(
            deductions.stream().map(Deduction::points).reduce(BigDecimal.ZERO, BigDecimal::add))
        : Optional.empty();
  }

  /** The maximum without the points lost, at least zero. */
  public Optional<BigDecimal> score() {
    return maximum.flatMap(
        full -> pointsLost().map(lost -> full.subtract(lost).max(BigDecimal.ZERO)));
  }
}
