package tenthmark.checker.report;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.rounding.Decimals;

/**
 * What the checker says about one file.
 *
 * @param file as it was named
 * @param problem why it could not be checked, in one line; empty if it was
 * @param contents what was read in it; nothing if it could not be checked
 * @param findings sheet by sheet, from top to bottom; what follows from one stands behind it
 */
public record FileReport(
    Path file, Optional<String> problem, Contents contents, List<Finding> findings) {

  /** Copies the findings. */
  public FileReport {
    findings = List.copyOf(findings);
  }

  /** The report on a file that was checked. */
  public static FileReport checked(Path file, Contents contents, List<Finding> findings) {
    return new FileReport(file, Optional.empty(), contents, findings);
  }

  /** The report on a file that could not be checked. */
  public static FileReport unchecked(Path file, String problem) {
    return new FileReport(file, Optional.of(problem), Contents.NONE, List.of());
  }

  /** The same report with other findings, such as a course's grading makes of them. */
  public FileReport withFindings(List<Finding> other) {
    return new FileReport(file, problem, contents, other);
  }

  /** The file's name without its folders. */
  public String name() {
    return file.getFileName().toString();
  }

  /** The findings that a person is shown. */
  public Excerpt excerpt() {
    return Excerpt.of(findings);
  }

  /** The findings that follow from no other: what is to be put right. */
  public List<Finding> toMend() {
    return findings.stream().filter(finding -> !finding.follows()).toList();
  }

  /** The findings that follow from one. */
  public List<Finding> following(Finding origin) {
    return findings.stream().filter(finding -> finding.followsFrom(origin)).toList();
  }

  /** How many findings that follow from no other have a severity. */
  public long count(Severity severity) {
    return toMend().stream().filter(finding -> finding.rule().severity() == severity).count();
  }

  /** What all findings cost together, exact to the last decimal. */
  public BigDecimal pointsLost() {
    return findings.stream()
        .map(finding -> Decimals.shortest(finding.points()))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .stripTrailingZeros();
  }
}
