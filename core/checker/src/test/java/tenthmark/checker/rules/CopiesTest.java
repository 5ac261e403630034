package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** Formulas and numbers among copies of one formula. Numbers are invented. */
class CopiesTest {

  @Nested
  class CopyDiffers {

    private static Grid speeds(int odd, String formula) {
      Grid grid = Grid.sheet("Runs").row("s", "t", "v");
      for (int row = 2; row <= 6; row++) {
        String copy = "=A" + row + "/B" + row;
        grid.row(row * 2.5, row * 1.5, row == odd ? formula : copy);
      }
      return grid;
    }

    @ParameterizedTest
    @CsvSource({
      "4, =A4/B4*1.05",
      "4, =(A4/B4)+0.3",
      "2, =A2/B2*1.05",
      "6, =0.97*(A6/B6)",
      "4, =A4/B3",
      "4, =A3/B4"
    })
    void isFound(int row, String formula) {
      assertThat(Findings.inCells(speeds(row, formula)))
          .containsExactly("C" + row + " copy-differs");
    }

    @Test
    void namesTheNeighbour() {
      Finding finding = Findings.onlyInCells(speeds(4, "=A4/B4*1.05"));

      assertThat(Findings.found(finding)).isEqualTo("=A4/B4*1.05, whereas C3 has =A3/B3");
      assertThat(Findings.expected(finding)).isEqualTo("a copy of the formula in C3");
    }

    @ParameterizedTest
    @CsvSource({
      "6, =A6/B5", // the last of central differences
      "2, =A3/B2", // the first of them
      "4, =A4*B4", // another formula
      "4, =A4/B4*A2", // a conversion that a cell holds
      "6, =SUM(C2:C5)" // a sum below
    })
    void isNotSaidOfEndsAndOtherFormulas(int row, String formula) {
      assertThat(Findings.inCells(speeds(row, formula))).isEmpty();
    }

    @Test
    void isFoundForANumberBetweenCopies() {
      Grid grid = Grid.sheet("Weights").row("m", "F");
      for (int row = 2; row <= 6; row++) {
        grid.row(row * 0.5, "=A" + row + (row == 4 ? "*9.18" : "*9.81"));
      }

      assertThat(Findings.inCells(grid)).containsExactly("B4 copy-differs");
    }
  }

  @Nested
  class TypedOver {

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.07})
    void isNotSaidOfMeasuredUncertaintiesAmongCalculatedOnes(double typed) {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Arm", 172.5, "mm", typed, REASON)
              .row("half", "=B2/2", "mm", "=D2/2", "")
              .row("quarter", "=B3/2", "mm", "=D3/2", "")
              .row("eighth", "=B4/2", "mm", "=D4/2", "");

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void isNotSaidBetweenFormulasThatFollowFromNothing() {
      Grid grid = Grid.sheet("Data").row("a", "=SQRT(3)").row("b", 2).row("c", "=SQRT(3)");

      assertThat(Findings.inCells(grid)).isEmpty();
    }

    @Test
    void isNotSaidOfInputsBetweenCopiesThatAreComputedFromThem() {
      assertThat(Findings.inCells(Grid.sheet("Data").row(1, "=A1*2", 7, "=C1*2", 9, "=E1*2")))
          .isEmpty();
    }

    @Test
    void isFoundBeforeAndAfterCopiesThatTakeAllFromTheirRows() {
      for (int odd : new int[] {2, 6}) {
        Grid grid = Grid.sheet("Runs").row("s", "t", "v");
        for (int row = 2; row <= 6; row++) {
          grid.row(row * 2.5, row * 1.5, row == odd ? 1.7 : "=A" + row + "/B" + row);
        }

        assertThat(Findings.inCells(grid)).containsExactly("C" + odd + " typed-over");
      }
    }

    @Test
    void isFoundForAValueBetweenCopies() {
      Grid grid =
          Grid.sheet("Records")
              .row("s / m", "Δs / m", "v / (m/s)", "Δv / (m/s)")
              .row(1.52, 0.01, "=A2/2", "=B2/2")
              .row(1.62, 0.01, 0.83, "=B3/2")
              .row(1.72, 0.01, "=A4/2", "=B4/2");

      assertThat(Findings.in(grid)).contains("C3 typed-over");
    }
  }
}
