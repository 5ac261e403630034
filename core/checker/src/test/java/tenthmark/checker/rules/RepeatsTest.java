package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** Rules about readings of one quantity. Numbers are invented unless a source is named. */
class RepeatsTest {

  private static final double[] TIMES = {8.71, 8.65, 8.93, 8.52, 8.77, 8.60, 8.84, 8.69};

  private static Grid mean(double[] readings, String uncertainty) {
    Grid grid = Grid.sheet("Timing").row("Turn", "Time / s");
    for (int i = 0; i < readings.length; i++) {
      grid.row(i + 1, readings[i]);
    }
    String range = "B2:B" + (readings.length + 1);
    return grid.row()
        .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
        .row("time", "=AVERAGE(" + range + ")", "s", uncertainty.replace("#", range), REASON);
  }

  @Nested
  class RepeatDiffers {

    @ParameterizedTest
    @ValueSource(strings = {"=STDEV(#)", "=STDEVP(#)", "=STDEVP(#)/SQRT(8)", "=STDEV(#)/SQRT(9)"})
    void isFound(String uncertainty) {
      assertThat(Findings.in(mean(TIMES, uncertainty))).containsExactly("D12 repeat-differs");
    }

    // JCGM 100:2008, 4.2.3: the experimental standard deviation of the mean is s over the root of n
    @ParameterizedTest
    @ValueSource(
        strings = {
          "=STDEV(#)/SQRT(COUNT(#))",
          "=STDEV(#)/SQRT(8)",
          "=2.36*STDEV(#)/SQRT(8)",
          "=(MAX(#)-MIN(#))/2",
          "=STDEV(#)+0.2"
        })
    void isNotSaidOfTheDeviationOfTheMeanAndOfOtherWays(String uncertainty) {
      assertThat(Findings.in(mean(TIMES, uncertainty))).isEmpty();
    }

    @Test
    void isFoundInWhatATotalAdds() {
      Grid grid = Grid.sheet("Timing").row("Turn", "Time / s");
      for (int i = 0; i < TIMES.length; i++) {
        grid.row(i + 1, TIMES[i]);
      }
      grid.row("s", "=STDEV(B2:B9)")
          .row("clock", 0.2)
          .row()
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("time", "=AVERAGE(B2:B9)", "s", "=B10+B11", REASON);

      assertThat(Findings.in(grid)).contains("B10 repeat-differs");
    }

    @Test
    void saysWhatStandsThere() {
      Finding finding = Findings.only(mean(TIMES, "=STDEV(#)/SQRT(9)"));

      assertThat(Findings.found(finding))
          .endsWith("the standard deviation over the root of 9, whereas 8 readings stand there");
    }
  }

  @Nested
  class FactorSlip {

    private static double[] with(int index, double reading) {
      double[] readings = TIMES.clone();
      readings[index] = reading;
      return readings;
    }

    @ParameterizedTest
    @ValueSource(doubles = {87.1, 871, 0.871, 0.0871})
    void isFoundForOneReadingOfMany(double slipped) {
      Finding finding = Findings.only(mean(with(2, slipped), "=STDEV(#)/SQRT(8)"));

      assertThat(finding.rule().id()).isEqualTo("factor-slip");
      assertThat(finding.cell().place()).isEqualTo("B4");
      assertThat(Findings.expected(finding)).isEqualTo("about 8.71: decimal point or unit?");
    }

    @Test
    void isNotSaidOfReadingsThatDifferAnyhow() {
      double[] decay = {100, 52, 26, 12.5, 6.2, 3.1};

      assertThat(Findings.in(mean(decay, "=STDEV(#)/SQRT(6)"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0981", "98.1", "981", "4.905", "588.6"})
    void isFoundBesideTheAcceptedValue(String value) {
      assertThat(Findings.in(gravity(value), PROFILE).stream().map(Findings::brief))
          .contains("B2 factor-slip")
          .doesNotContain("B2 accepted-missed");
    }

    @Test
    void isNotSaidOfAnotherDifference() {
      assertThat(Findings.in(gravity("8.1"), PROFILE).stream().map(Findings::brief))
          .contains("B2 accepted-missed")
          .doesNotContain("B2 factor-slip");
      assertThat(Findings.in(gravity("9.83"), PROFILE).stream().map(Findings::brief))
          .doesNotContain("B2 factor-slip", "B2 accepted-missed");
    }

    private static final String PROFILE =
        """
        quantities:
          - name: g
            unit: m/s²
            accepted: 9.81
        """;

    private static Grid gravity(String value) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("g", Double.valueOf(value), "m/s²", Double.valueOf(value) * 0.01, REASON);
    }
  }

  @Nested
  class ScatterUnlikely {

    @Test
    void isFoundForAStray() {
      double[] readings = TIMES.clone();
      readings[3] = 11.9;

      assertThat(Findings.in(mean(readings, "=STDEV(#)/SQRT(8)")))
          .containsExactly("B5 scatter-unlikely");
    }

    // F. E. Grubbs, Technometrics 11 (1969) 1, table 1: for n = 8 the limit at 1 % in one tail is
    // 2.221 (from memory); at 0.5 % in each of two it is higher, so 2.2 is never suspect
    @Test
    void isNotSaidOfOrdinaryScatter() {
      assertThat(Findings.in(mean(TIMES, "=STDEV(#)/SQRT(8)"))).isEmpty();
    }

    @Test
    void isFoundForReadingsThatAreAllTheSame() {
      double[] same = {8.7, 8.7, 8.7, 8.7, 8.7};

      assertThat(Findings.in(mean(same, "=0.2"))).contains("B2 scatter-unlikely");
    }

    @Test
    void isFoundForAPointFarOffTheLine() {
      Grid grid =
          Grid.sheet("Line")
              .row("x", "y")
              .row(1, 2.02)
              .row(2, 3.97)
              .row(3, 6.03)
              .row(4, 9.9)
              .row(5, 10.01)
              .row(6, 11.98)
              .row()
              .row("slope", "=SLOPE(B2:B7,A2:A7)");

      assertThat(Findings.inCells(grid)).containsExactly("B5 scatter-unlikely");
    }
  }

  @Nested
  class UncertaintyNotPositive {

    private static Grid arm(Object uncertainty) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Arm", 172.5, "mm", uncertainty, REASON);
    }

    @Test
    void isAnErrorBelowZeroAndANoteAtZero() {
      assertThat(Findings.only(arm(-0.5)).rule().severity()).isEqualTo(Severity.ERROR);
      assertThat(Findings.only(arm(0)).rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.in(arm(-0.5))).containsExactly("D2 uncertainty-not-positive");
      assertThat(Findings.in(arm(0.5))).isEmpty();
    }
  }
}
