package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tenthmark.checker.workbook.Grid;

/** What findings cost by a course's profile. */
class GradingTest {

  /** Totals that are no sums in three records, no unit in the first either. */
  private static final Grid TABLE =
      Findings.table()
          .row("Spoke, length", "s", 290, null, 1, "fine", 2, 0.5, 0.1, null, null, null, 6)
          .row("Spoke, width", "w", 2.5, "mm", 1, "fine", 2, 0.5, 0.2, null, null, null, 2)
          .row("Foam grip, wall", "g", 5.5, "mm", 1, "fine", 2, 0.5, 0.3, null, null, null, 3)
          .row("Why", Findings.REASON);

  private static final String POINTS =
      "rules: {unit-missing: {points: 1}, total-differs: {points: 2}}\n";

  private static List<String> costs(String profile) {
    return Findings.in(TABLE, POINTS + profile).stream()
        .map(finding -> Findings.brief(finding) + " " + finding.points())
        .toList();
  }

  @Test
  void eachFindingCostsWhatItsRuleCosts() {
    assertThat(costs(""))
        .containsExactly(
            "D2 unit-missing 1.0",
            "M2 total-differs 2.0",
            "M3 total-differs 2.0",
            "M4 total-differs 2.0");
  }

  @Test
  void theFindingsOfOneRuleCostAtMostSoMuchTogether() {
    assertThat(costs("grades: {most-per-rule: 2.5}"))
        .containsExactly(
            "D2 unit-missing 1.0",
            "M2 total-differs 2.0",
            "M3 total-differs 0.5",
            "M4 total-differs 0.0");
  }

  @Test
  void theFindingsInOneRecordCostAtMostSoMuchTogether() {
    assertThat(costs("grades: {most-per-record: 2.1}"))
        .containsExactly(
            "D2 unit-missing 1.0",
            "M2 total-differs 1.1",
            "M3 total-differs 2.0",
            "M4 total-differs 2.0");
  }

  @Test
  void noMoreIsLostInAPartOfTheWorkThanItGives() {
    assertThat(
            costs(
                """
                grades:
                  maximum: 10
                  parts:
                    - {part: totals, share: 0.5, rules: total-differs}
                    - {part: bench, share: 2, sheets: records}
                """))
        .containsExactly(
            "D2 unit-missing 1.0",
            "M2 total-differs 0.5",
            "M3 total-differs 0.0",
            "M4 total-differs 0.0");
  }

  @Test
  void aNoteCostsNothing() {
    assertThat(
            Findings.in(TABLE, "rules: {unit-missing: {severity: note, points: 1}}").stream()
                .map(Finding::points))
        .containsOnly(0.0);
  }
}
