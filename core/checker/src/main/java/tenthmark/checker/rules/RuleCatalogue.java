package tenthmark.checker.rules;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;

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
    return grading.applied(this).check(inspection).stream().map(grading::graded).toList();
  }

  /** What all rules find in a workbook: sheet by sheet, from top to bottom. */
  public List<Finding> check(Inspection inspection) {
    List<String> sheets =
        inspection.workbook().sheets().stream().map(sheet -> sheet.name()).toList();
    return rules.stream()
        .flatMap(rule -> rule.check(inspection).stream())
        .sorted(
            Comparator.comparing((Finding finding) -> sheets.indexOf(finding.cell().sheet()))
                .thenComparing(PLACE))
        .toList();
  }
}
