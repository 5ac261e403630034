package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.checker.workbook.Grid;

/** One fault in many cells is one finding; tables and numbers are invented. */
class RepetitionsTest {

  private static final Object[] HEADINGS = {
    "Quantity", "Value", "Unit", "Reading", "Physical", "Uncertainty", "Rationale"
  };

  private static List<String> found(Grid grid) {
    return Findings.in(grid.workbook()).stream()
        .map(finding -> Findings.brief(finding) + ": " + Findings.said(finding))
        .toList();
  }

  /** Three arms, of which some lack a unit. */
  private static Grid arms(String... units) {
    Grid grid = Grid.sheet("Bench").row(HEADINGS);
    for (int i = 0; i < units.length; i++) {
      grid.row("Arm " + i, 172.5 + i, units[i], 0.5, 0.2, "=D" + (i + 2) + "+E" + (i + 2), REASON);
    }
    return grid;
  }

  @Nested
  class IsOneFinding {

    @Test
    void whereTheSameIsMissingDownAColumn() {
      assertThat(found(arms(null, null, "mm", null)))
          .containsExactly("C2 unit-missing: the record \"Arm 0\" has no unit; likewise in C3, C5");
    }

    @Test
    void thatIsChargedOnce() {
      List<Finding> findings =
          Findings.in(arms(null, null, null), "rules: {unit-missing: {points: 2}}");

      assertThat(findings)
          .singleElement()
          .satisfies(
              one -> {
                assertThat(one.points()).isEqualTo(2);
                assertThat(one.cells()).hasSize(3);
              });
    }

    @Test
    void whereOneFormulaWasCopiedDown() {
      Grid grid = Grid.sheet("Bench").row(HEADINGS);
      for (int row = 2; row < 6; row++) {
        grid.row("Arm", 172.5, "mm", 0.5, 0.1 * row, "=D" + row, REASON);
      }

      assertThat(found(grid))
          .singleElement()
          .asString()
          .startsWith("F2 total-differs:")
          .endsWith("; likewise in F3:F5");
    }
  }

  @Nested
  class AreSeveral {

    @Test
    void whereEachNumberIsWrongByItself() {
      Grid grid = Grid.sheet("Bench").row(HEADINGS);
      for (int row = 2; row < 5; row++) {
        grid.row("Arm", 172.5, "mm", 0.5, 0.1 * row, 2.5, REASON);
      }

      assertThat(Findings.in(grid)).hasSize(3);
      assertThat(Findings.in(grid.workbook())).hasSize(3);
    }

    @Test
    void whereAFormulaIsNoCopyOfTheOther() {
      Grid grid =
          Grid.sheet("Bench")
              .row(HEADINGS)
              .row("Arm", 172.5, "mm", 0.5, 0.2, "=D2", REASON)
              .row("Axle", 19.8, "mm", 0.5, 0.2, "=E3", REASON);

      assertThat(Findings.in(grid.workbook())).hasSize(2);
    }

    @Test
    void inColumnsOfTheirOwn() {
      Grid grid =
          Grid.sheet("Bench")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Arm", 172.5, null, 0.5, null)
              .row("Axle", 19.8, null, 0.5, null);

      assertThat(found(grid))
          .hasSize(2)
          .allSatisfy(line -> assertThat(line).contains("likewise in"));
    }

    @Test
    void onSheetsOfTheirOwn() {
      Grid grid =
          arms((String) null)
              .andSheet("More")
              .row(HEADINGS)
              .row("Rim", 622, null, 0.5, 0.2, "=D2+E2", REASON);

      assertThat(Findings.in(grid.workbook())).hasSize(2);
    }
  }
}
