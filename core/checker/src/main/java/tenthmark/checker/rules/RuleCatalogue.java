package tenthmark.checker.rules;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.formula.CellAddress;

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
    return grade(examine(inspection), grading);
  }

  /** What all rules find in a workbook: sheet by sheet, from top to bottom. */
  public List<Finding> check(Inspection inspection) {
    return check(inspection, Grading.DECLARED);
  }

  /** What all rules find and what follows from it, before a course grades it. */
  public List<Finding> examine(Inspection inspection) {
    List<Finding> faults = new Repetitions(inspection, absences()).joined(found(inspection));
    return inRecords(new Causes(this, inspection).withEffects(faults), inspection);
  }

  private Set<String> absences() {
    return rules.stream()
        .filter(AbsenceRule.class::isInstance)
        .map(rule -> rule.declaration().id())
        .collect(Collectors.toSet());
  }

  private static List<Finding> inRecords(List<Finding> findings, Inspection inspection) {
    Map<CellAddress, CellAddress> records = new HashMap<>();
    for (MeasurementRecord measurement : inspection.records()) {
      CellAddress value = measurement.placeOrValue(Field.VALUE);
      measurement.places().forEach(place -> records.putIfAbsent(place, value));
    }
    return findings.stream()
        .map(finding -> finding.inRecord(Optional.ofNullable(records.get(finding.cell()))))
        .toList();
  }

  /**
   * What a course makes of findings: those of the rules that it applies, with its severities and
   * points. It grades what is certain; what is in doubt stays a note whatever the course says. What
   * follows from another of them is not charged once more, and nothing beyond the course's limits.
   */
  public List<Finding> grade(List<Finding> findings, Grading grading) {
    Map<String, Severity> declared =
        rules.stream()
            .map(Rule::declaration)
            .collect(Collectors.toMap(RuleDeclaration::id, RuleDeclaration::severity));
    List<Finding> resolved =
        Consequences.resolve(
            findings.stream()
                .filter(grading::applies)
                .map(
                    finding ->
                        isInDoubt(finding, declared.get(finding.rule().id()))
                            ? finding
                            : grading.graded(finding))
                .toList());
    return grading.limits().applied(resolved);
  }

  private static boolean isInDoubt(Finding finding, Severity declared) {
    return finding.isInDoubt() || isNote(finding, declared);
  }

  /** A rule that is not sure makes a note of what it finds. */
  private static boolean isNote(Finding finding, Severity declared) {
    return finding.rule().severity() == Severity.NOTE && declared != Severity.NOTE;
  }

  /** The same before it is known what follows from what. */
  List<Finding> found(Inspection inspection) {
    List<String> sheets =
        inspection.workbook().sheets().stream().map(sheet -> sheet.name()).toList();
    Doubts doubts = new Doubts(inspection);
    return rules.stream()
        .flatMap(
            rule ->
                rule instanceof AbsenceRule absence
                    ? absences(absence, inspection, doubts)
                    : rule.check(inspection).stream()
                        .map(finding -> inDoubt(rule, finding, doubts)))
        .sorted(
            Comparator.comparing((Finding finding) -> sheets.indexOf(finding.cell().sheet()))
                .thenComparing(PLACE))
        .toList();
  }

  private static Finding inDoubt(Rule rule, Finding finding, Doubts doubts) {
    return rule.restsOnTables() && !isNote(finding, rule.declaration().severity())
        ? doubts.about(finding).map(finding::perhapsMisread).orElse(finding)
        : finding;
  }

  private static Stream<Finding> absences(AbsenceRule rule, Inspection inspection, Doubts doubts) {
    return inspection.records().stream()
        .flatMap(
            measurement ->
                rule.check(measurement, inspection).stream()
                    .map(
                        finding ->
                            doubts
                                .about(measurement, rule.part())
                                .map(finding::inDoubt)
                                .orElse(finding)));
  }
}
