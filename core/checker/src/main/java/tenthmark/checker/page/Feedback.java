package tenthmark.checker.page;

import java.util.Optional;
import tenthmark.checker.grade.Grade;
import tenthmark.checker.report.Provenance;

/**
 * What a student's page says beside what was found.
 *
 * @param provenance by what and when the workbook was checked
 * @param grade what the student's newest workbook gives; none where the workbook stands for itself
 */
public record Feedback(Optional<Provenance> provenance, Optional<Grade> grade) {

  /** Nothing beside what was found. */
  public static final Feedback NONE = new Feedback(Optional.empty(), Optional.empty());
}
