package tenthmark.checker.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.measurement.wording.Message;

/** All rules, by severity and id. */
public record RuleCatalogue(List<Rule> rules) {

  private static final Comparator<Rule> ORDER =
      Comparator.comparing((Rule rule) -> rule.declaration().severity())
          .thenComparing(rule -> rule.declaration().id());

  private static final Comparator<Finding> PLACE =
      Comparator.comparing((Finding finding) -> finding.cell().row())
          .thenComparing(finding -> finding.cell().column())
          .thenComparing(finding -> finding.rule().id());

  /** Finds every registered rule. */
  public static RuleCatalogue load() {
    return new RuleCatalogue(
        ServiceLoader.load(Rule.class, RuleCatalogue.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .sorted(ORDER)
            .toList());
  }

  /** The ids of the rules. */
  public Set<String> ids() {
    return rules.stream().map(rule -> rule.declaration().id()).collect(Collectors.toSet());
  }

  /** What the rules that a course applies find in a workbook, with the course's severities. */
  public List<Finding> check(Inspection inspection, Grading grading) {
    RuleCatalogue applied = grading.applied(this);
    return new Causes(applied, inspection).resolve(applied.found(inspection, grading::graded));
  }

  /** What all rules find in a workbook: sheet by sheet, from top to bottom. */
  public List<Finding> check(Inspection inspection) {
    return check(inspection, Grading.DECLARED);
  }

  /** The same before it is known what follows from what. */
  List<Finding> found(Inspection inspection) {
    return found(inspection, UnaryOperator.identity());
  }

  private List<Finding> found(Inspection inspection, UnaryOperator<Finding> grade) {
    List<String> sheets =
        inspection.workbook().sheets().stream().map(sheet -> sheet.name()).toList();
    Doubts doubts = new Doubts(inspection);
    return rules.stream()
        .flatMap(
            rule ->
                rule instanceof AbsenceRule absence
                    ? absences(absence, inspection, doubts, grade)
                    : rule.check(inspection).stream()
                        .map(finding -> graded(rule, finding, doubts, grade)))
        .sorted(
            Comparator.comparing((Finding finding) -> sheets.indexOf(finding.cell().sheet()))
                .thenComparing(PLACE))
        .toList();
  }

  private static Finding graded(
      Rule rule, Finding finding, Doubts doubts, UnaryOperator<Finding> grade) {
    if (isInDoubt(finding, rule)) {
      return finding;
    }
    return (rule.restsOnTables() ? doubts.about(finding) : Optional.<Message>empty())
        .map(finding::perhapsMisread)
        .orElseGet(() -> grade.apply(finding));
  }

  /** A rule that is not sure makes a note of what it finds. */
  private static boolean isInDoubt(Finding finding, Rule rule) {
    return finding.rule().severity() == Severity.NOTE
        && rule.declaration().severity() != Severity.NOTE;
  }

  /** A course grades what is certain; what is in doubt stays a note whatever the course says. */
  private static Stream<Finding> absences(
      AbsenceRule rule, Inspection inspection, Doubts doubts, UnaryOperator<Finding> grade) {
    return inspection.records().stream()
        .flatMap(
            measurement ->
                rule.check(measurement, inspection).stream()
                    .map(
                        finding ->
                            doubts
                                .about(measurement, rule.part())
                                .map(finding::inDoubt)
                                .orElseGet(() -> grade.apply(finding))));
  }
}
