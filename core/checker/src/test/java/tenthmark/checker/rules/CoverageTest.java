package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.checker.workbook.Grid;

/** How much of a workbook was read. Students and numbers are invented. */
class CoverageTest {

  private static List<String> findings(Grid grid) {
    return Findings.ofCoverage(grid.workbook());
  }

  @Nested
  class AWorkbookWithoutARecord {

    @Test
    void isAnErrorAtItsFirstNumber() {
      assertThat(findings(Grid.sheet("Data").row("A", "B").row("spoke", 262.5).row("arm", 172.5)))
          .contains("B2 nothing-read");
    }

    @Test
    void isNoneWhereItHoldsNoNumberEither() {
      assertThat(findings(Grid.sheet("Notes").row("We measured spokes.").row("Ada"))).isEmpty();
    }

    @Test
    void isNoneForNumbersThatNobodySees() {
      assertThat(findings(Grid.sheet("Notes").row("Ada").andHiddenSheet("Lists").row(1).row(2)))
          .isEmpty();
    }
  }

  @Nested
  class WhatWasNotRead {

    private static Grid bench() {
      return Grid.sheet("Bench")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends.");
    }

    @Test
    void isOneNoteForEachReasonOnASheetWithAllItsCells() {
      Grid grid =
          bench()
              .row()
              .row()
              .row(null, null, 7.5)
              .row(null, null, 8.5)
              .row()
              .row()
              .row(null, null, 9.5)
              .andSheet("More")
              .row(1.25);

      List<Finding> findings = Findings.ofCoverageInFull(grid.workbook());

      assertThat(findings).allMatch(finding -> finding.rule().severity() == Severity.NOTE);
      assertThat(findings)
          .extracting(Findings::found)
          .anyMatch(found -> found.startsWith("C5:C6, C9 not read: "))
          .anyMatch(found -> found.startsWith("A1 not read: "))
          .hasSize(2);
    }

    @Test
    void isNothingWhereEveryNumberIsUnderstood() {
      assertThat(findings(bench())).isEmpty();
    }
  }

  @Test
  void oneRecordIsEnoughToHaveReadSomething() {
    assertThat(
            findings(
                Grid.sheet("Data")
                    .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
                    .row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends.")
                    .row()
                    .row(7.5)))
        .noneMatch(found -> found.contains("nothing-read"));
  }
}
