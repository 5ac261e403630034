package tenthmark.checker.remark;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import tenthmark.checker.roster.Student;
import tenthmark.checker.rules.Finding;

/**
 * What an instructor decided about a student's workbook.
 *
 * @param row of the file of remarks
 * @param student the id, or the name where there is no id
 * @param rule of the findings that are meant; empty for a deduction of the instructor's own
 * @param cell of the finding that is meant, such as Bench.D10, one of several that have the fault;
 *     empty for all of the rule
 * @param points that each of these findings costs instead, or that the own deduction costs
 * @param because a sentence for the student
 */
public record Remark(
    long row,
    String student,
    Optional<String> rule,
    Optional<String> cell,
    BigDecimal points,
    String because) {

  /** Whether it is about this student. */
  public boolean isAbout(Student someone) {
    return student.equalsIgnoreCase(someone.id())
        || student.equalsIgnoreCase(someone.name()) && !student.isEmpty();
  }

  /** Whether it is about this finding of the student. */
  public boolean isAbout(Finding finding) {
    return rule.filter(finding.rule().id()::equals).isPresent()
        && cell.map(
                place ->
                    finding.cells().stream().anyMatch(at -> key(place).equals(key(at.toString()))))
            .orElse(true);
  }

  private static String key(String place) {
    return place.replace("$", "").replace('!', '.').toLowerCase(Locale.ROOT);
  }

  /** Whether it is a deduction that no finding gives. */
  public boolean isOwn() {
    return rule.isEmpty();
  }
}
