package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** Ranges and fitted lines. Numbers are invented unless a source is named. */
class RangesAndLinesTest {

  @Nested
  class RangeShort {

    private static Grid times() {
      return Grid.sheet("Timing")
          .row("Turn", "Time / s")
          .row(1, 12.4)
          .row(2, 12.6)
          .row(3, 12.3)
          .row(4, 12.7)
          .row(5, 12.5);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=AVERAGE(B2:B5)",
          "=STDEV(B2:B5)/SQRT(COUNT(B2:B6))",
          "=LAB_REPEATS($B$2:$B$5)",
          "=ROUND(SUM(B3:B6),1)"
        })
    void isFoundAtEitherEnd(String formula) {
      assertThat(Findings.inCells(times().row().row("mean", formula)))
          .containsExactly("B8 range-short");
    }

    @Test
    void namesTheCellLeftOut() {
      Finding finding = Findings.onlyInCells(times().row().row("mean", "=AVERAGE(B2:B5)"));

      assertThat(Findings.found(finding)).isEqualTo("=AVERAGE(B2:B5) leaves out B6");
    }

    @Test
    void isNotSaidOfTheWholeSeries() {
      assertThat(Findings.inCells(times().row("mean", "=AVERAGE(B2:B6)"))).isEmpty();
      assertThat(Findings.inCells(times().row().row("mean", "=AVERAGE(B2:B6)"))).isEmpty();
    }

    @Test
    void isNotSaidOfAnotherNumberBelow() {
      Grid grid =
          times().row("accepted", 12.0).row("mean", "=AVERAGE(B2:B6)", "of 5", "=SUM(B2:B6)/5");

      assertThat(Findings.inCells(grid)).isEmpty();
    }

    @Test
    void isNotSaidOfGroupsThatFollowEachOther() {
      Grid grid =
          times()
              .row(6, 12.9)
              .row(7, 12.4)
              .row()
              .row("first", "=AVERAGE(B2:B4)")
              .row("then", "=AVERAGE(B5:B8)");

      assertThat(Findings.inCells(grid)).isEmpty();
    }

    @Test
    void isNotSaidOfAWindowThatMoves() {
      Grid grid =
          Grid.sheet("Timing")
              .row("Turn", "Time / s", "smooth")
              .row(1, 12.4)
              .row(2, 12.6, "=AVERAGE(B2:B4)")
              .row(3, 12.3, "=AVERAGE(B3:B5)")
              .row(4, 12.7, "=AVERAGE(B4:B6)")
              .row(5, 12.5);

      assertThat(Findings.inCells(grid)).isEmpty();
    }

    @Test
    void isANoteOfALineThroughAPart() {
      Finding finding = Findings.onlyInCells(times().row().row("slope", "=SLOPE(B2:B5,A2:A5)"));

      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.expected(finding))
          .isEqualTo("a range that takes B6 in, or a word why this point is left out");
      assertThat(Findings.inCells(times().row().row("slope", "=SLOPE(B2:B6,A2:A6)"))).isEmpty();
    }

    @Test
    void isANoteOfCalculatedValues() {
      Grid grid = Grid.sheet("Runs").row("s", "v");
      for (int row = 2; row <= 6; row++) {
        grid.row(row * 1.5, "=A" + row + "/2");
      }

      assertThat(Findings.inCells(grid.row().row("mean", "=AVERAGE(B2:B5)")))
          .containsExactly("B8 range-short");
    }

    @Test
    void isNotSaidOfRecords() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
                      .row("Side 1", 10, "mm", 0.5, REASON)
                      .row("Side 2", 10, "mm", 0.5, REASON)
                      .row("Side 3", 10, "mm", 0.5, REASON)
                      .row("Side 4", 10, "mm", 0.5, REASON)
                      .row()
                      .row("three sides", "=SUM(B2:B4)")))
          .isEmpty();
    }
  }

  @Nested
  class TotalShort {

    private static Grid total(Object instrument, String formula) {
      return Grid.sheet("Records")
          .row(
              "Quantity",
              "Value",
              "Unit",
              "Reading",
              "Physical",
              "Instrument",
              "Uncertainty",
              "Rationale")
          .row("Grip", 128, "mm", 0.5, 1, instrument, formula, REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=LAB_TOTAL(D2:E2)", "=SUM(D2:E2)", "=SQRT(SUMSQ(D2:E2))"})
    void isFoundWhereTheColumnIsStillEmpty(String formula) {
      Finding finding = Findings.only(total(null, formula));

      assertThat(finding.rule().id()).isEqualTo("total-short");
      assertThat(finding.cell().place()).isEqualTo("G2");
      assertThat(Findings.found(finding)).endsWith("leaves out the column instrument");
    }

    @Test
    void leavesASizeLeftOutToTheTotalItself() {
      assertThat(Findings.in(total(0.2, "=LAB_TOTAL(D2:E2)"))).containsExactly("G2 total-differs");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_TOTAL(D2:F2)",
          "=D2+E2",
          "=SUM(D2:E2,F2)",
          "=LAB_TOTAL(D2:F2,\"straight\")"
        })
    void isNotSaidOfAllColumnsNorOfSingleCells(String formula) {
      assertThat(Findings.in(total(null, formula))).isEmpty();
    }
  }

  @Nested
  class SlopeTooSure {

    /**
     * The pulls of a brake lever; by the textbook formulas Sxy/Sxx and s/sqrt(Sxx), computed in
     * Python, the slope is 2.40431 and its standard uncertainty 0.02478.
     */
    private static Grid line(String slope, Object uncertainty) {
      return Grid.sheet("Lever")
          .row("Travel", "Force")
          .row(2.1, 4.9)
          .row(4.0, 9.8)
          .row(6.2, 14.7)
          .row(8.1, 19.6)
          .row(10.3, 24.5)
          .row(12.2, 29.4)
          .row()
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Spring rate", slope, "N/mm", uncertainty, REASON);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"=SLOPE(B2:B7,A2:A7)", "=LAB_SLOPE(A2:A7,B2:B7)", "=slope(B2:B7,A2:A7)"})
    void isFoundWithTheScatter(String slope) {
      Finding finding = Findings.only(line(slope, 0.005));

      assertThat(finding.rule().id()).isEqualTo("slope-too-sure");
      assertThat(finding.cell().place()).isEqualTo("D10");
      assertThat(Findings.expected(finding)).startsWith("at least 0.0248,").contains("6 points");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_SLOPEERROR(A2:A7,B2:B7)",
          "=STEYX(B2:B7,A2:A7)/SQRT(DEVSQ(A2:A7))",
          "=2*LAB_SLOPEERROR(A2:A7,B2:B7)"
        })
    void isNotSaidOfTheScatterOrMore(String uncertainty) {
      assertThat(Findings.in(line("=SLOPE(B2:B7,A2:A7)", uncertainty)))
          .doesNotContain("D10 slope-too-sure");
      assertThat(Findings.in(line("=SLOPE(B2:B7,A2:A7)", 0.1))).isEmpty();
    }

    /** Equal error bars leave the line where it is; the scatter is the same. */
    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_SLOPE(A2:A7,B2:B7,C2:C7,D2:D7)",
          "=LAB_SLOPE(A2:A7,B2:B7,,D2:D7)",
          "=LAB_SLOPE(A2:A7,B2:B7,C2:C7)"
        })
    void isFoundUnderEqualErrorBars(String slope) {
      assertThat(Findings.in(withBars(slope, 0.01))).containsExactly("D10 slope-too-sure");
      assertThat(Findings.in(withBars(slope, 0.02))).isEmpty();
    }

    private static Grid withBars(String slope, double last) {
      return Grid.sheet("Lever")
          .row("Travel", "Force", "bar", "bar")
          .row(2.1, 4.9, 0.01, 0.01)
          .row(4.0, 9.8, 0.01, 0.01)
          .row(6.2, 14.7, 0.01, 0.01)
          .row(8.1, 19.6, 0.01, 0.01)
          .row(10.3, 24.5, 0.01, 0.01)
          .row(12.2, 29.4, last, last)
          .row()
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Spring rate", slope, "N/mm", 0.005, REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=SLOPE(B12:B15,A12:A15)", "=LAB_SLOPE(A12:A15,B12:B15,C2:C5,D2:D5)"})
    void isNotSaidBeforeThereArePoints(String slope) {
      assertThat(Findings.in(withBars(slope, 0.01))).containsExactly("B10 error-cell");
    }

    /** A slope beside a graph, as it is written without headings. */
    private static Grid besideGraph(String label, Object uncertainty) {
      return Grid.sheet("Lever")
          .row("Travel / mm", "Force / N")
          .row(2.1, 4.9)
          .row(4.0, 9.8)
          .row(6.2, 14.7)
          .row(8.1, 19.6)
          .row(10.3, 24.5)
          .row(12.2, 29.4)
          .row("slope", "=SLOPE(B2:B7,A2:A7)", "N/mm")
          .row("intercept", "=INTERCEPT(B2:B7,A2:A7)", "N")
          .row(label, uncertainty, "N/mm");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "u(slope)",
          "Error of slope",
          "± slope",
          "Δm",
          "uncertainty",
          "Unsicherheit der Steigung",
          "std dev of slope"
        })
    void looksForTheUncertaintyBelowASlopeWithoutHeadings(String label) {
      Finding finding = Findings.only(besideGraph(label, 0.005));

      assertThat(Findings.brief(finding)).isEqualTo("B10 slope-too-sure");
      assertThat(Findings.in(besideGraph(label, "=INDEX(LINEST(B2:B7,A2:A7,1,1),2,1)"))).isEmpty();
    }

    @Test
    void looksForTheUncertaintyBesideASlopeToo() {
      Grid grid = besideGraph("remark", null).row("k", "=SLOPE(B2:B7,A2:A7)", "±", 0.005, "N/mm");

      assertThat(Findings.in(grid)).contains("D11 slope-too-sure");
    }

    @Test
    void missesAnUncertaintyThatIsNowhere() {
      assertThat(Findings.in(besideGraph("scatter of the points", 0.005)))
          .containsExactly("B8 uncertainty-missing");
    }

    @Test
    void leavesASlopeAloneThatNoTextNames() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Lever").row(2.1, 4.9).row(4.0, 9.8).row("=SLOPE(B1:B2,A1:A2)")))
          .isEmpty();
    }
  }
}
