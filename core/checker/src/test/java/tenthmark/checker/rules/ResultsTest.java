package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Grid.Stored;

class ResultsTest {

  @Nested
  class DigitsUnmatched {

    private static Grid stated(String result) {
      return Grid.sheet("Records").row("Quantity", "Value", "Rationale").row("Arm", result, REASON);
    }

    private static Grid typed(double value, Object uncertainty) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Arm", value, "mm", uncertainty, REASON);
    }

    // JCGM 100:2008, 7.2.6: at most two digits of uncertainty, the value to the same place
    @ParameterizedTest
    @ValueSource(
        strings = {
          "172.53 ± 0.5 mm",
          "172 ± 0.5 mm",
          "172.5 ± 0.512 mm",
          "172.5 ± 0.51 mm",
          "1.7 +/- 0.02 m",
          "12.4567(123) mm"
        })
    void isFoundInAStatedResult(String result) {
      assertThat(Findings.in(stated(result))).containsExactly("B2 digits-unmatched");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "172.5 ± 0.5 mm",
          "172.50 ± 0.15 mm",
          "172.5(5) mm",
          "(1.725 ± 0.005)×10^2 mm",
          "172.5 mm ± 0.3 %",
          "172.3 ± 0.25 mm",
          "36 (exact)",
          "170 ± 10 mm",
          "2700 ± 120 mm"
        })
    void isNotSaidOfMatchingDigitsOrARawFineReading(String result) {
      assertThat(Findings.in(stated(result))).doesNotContain("B2 digits-unmatched");
    }

    @Test
    void isFoundWhereABareValueHasTooManyDecimals() {
      Finding finding = Findings.only(typed(172.5432, 0.5));

      assertThat(finding.rule().id()).isEqualTo("digits-unmatched");
      assertThat(finding.cell().place()).isEqualTo("B2");
      assertThat(Findings.expected(finding))
          .isEqualTo("at most 2 decimals beside the uncertainty 0.5");
    }

    @Test
    void isFoundWhereABareUncertaintyHasTooManyDigits() {
      assertThat(Findings.in(typed(172.5, 0.5123))).containsExactly("D2 digits-unmatched");
    }

    @ParameterizedTest
    @CsvSource({"172.5, 0.5", "172.3, 0.25", "172, 0.05", "172.53, 0.5", "1e300, 1e298"})
    void isNotSaidOfBareNumbersWhoseZerosMayBeHidden(double value, double uncertainty) {
      assertThat(Findings.in(typed(value, uncertainty))).isEmpty();
    }

    @Test
    void isNotSaidOfATotalThatAddsUpExactly() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Reading", "Physical", "Total", "Rationale")
                      .row("Arm", 172.5, "mm", 0.25, 0.125, 0.375, REASON)))
          .isEmpty();
    }
  }

  @Nested
  class ResultDiffers {

    private static Grid result(double value, double uncertainty, String result) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Result", "Rationale")
          .row("Arm", value, "mm", uncertainty, result, REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"172.4 ± 0.5 mm", "172.5 ± 0.3 mm", "17.3(5) mm"})
    void isFoundWhereTheTextSaysOtherwise(String text) {
      assertThat(Findings.in(result(172.5, 0.5, text))).containsExactly("E2 result-differs");
    }

    @Test
    void isFoundWhereZerosHoldThePlace() {
      assertThat(Findings.in(result(2702.77, 86.9, "2710 ± 90 mm")))
          .containsExactly("E2 result-differs");
    }

    @ParameterizedTest
    @CsvSource({
      "172.53, 0.48, 172.5 ± 0.5 mm", "172.25, 0.41, 172.2 ± 0.5 mm",
      "172.5, 0.5, '172,5 mm ± 0,3 %'", "172.5, 0.5, see below",
      "2702.77, 86.9, 2700 ± 90 mm", "2702.77, 121, 2700 ± 120 mm"
    })
    void isNotSaidOfRoundingUp(double value, double uncertainty, String text) {
      assertThat(Findings.in(result(value, uncertainty, text))).isEmpty();
    }
  }

  @Nested
  class TypedOver {

    private static Grid rows(Object second) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", "Uncertainty", "Rationale")
          .row("Arm", 172.5, "mm", 0.5, "=LAB_TOTAL(D2)", REASON)
          .row("Spoke", 291.3, "mm", 0.5, second, REASON)
          .row("Grip", 128, "mm", 0.5, "=LAB_TOTAL(D4)", REASON)
          .row("Lever", 91.5, "mm", 0.5, "=LAB_TOTAL(D5)", REASON);
    }

    @Test
    void isFoundInAColumnOfFormulas() {
      Finding finding = Findings.only(rows(0.5));

      assertThat(finding.rule().id()).isEqualTo("typed-over");
      assertThat(finding.cell().place()).isEqualTo("E3");
      assertThat(Findings.found(finding)).isEqualTo("the typed-in number 0.5");
      assertThat(Findings.expected(finding))
          .isEqualTo("a formula, as in the uncertainty of 3 other records");
    }

    @Test
    void isFoundBetweenEqualFormulasAnywhere() {
      assertThat(Findings.inCells(Grid.sheet("Data").row(1, "=A1*2").row(2, 4).row(3, "=A3*2")))
          .containsExactly("B2 typed-over");
      assertThat(Findings.inCells(Grid.sheet("Data").row(1, 2, 3).row("=A1*2", 4, "=C1*2")))
          .containsExactly("B2 typed-over");
    }

    @Test
    void isNotSaidOfStartValuesInputsAndOtherFormulas() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(1, 0)
                      .row(2, "=B1+A2")
                      .row(3, "=B2+A3")
                      .row(4, 7)
                      .row(5, "=B4*A5")))
          .isEmpty();
      assertThat(Findings.in(rows("=D3"))).isEmpty();
    }
  }

  @Nested
  class ResultStale {

    @Test
    void isFoundWithBothValues() {
      Finding finding = Findings.onlyInCells(Grid.sheet("Data").row(2, new Stored("=A1*3", 7)));

      assertThat(finding.rule().id()).isEqualTo("result-stale");
      assertThat(Findings.found(finding)).isEqualTo("the stored result 7");
      assertThat(Findings.expected(finding)).isEqualTo("6 (=A1*3)");
    }

    @Test
    void isReportedWhereItBegins() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data").row(2, new Stored("=A1*3", 7), new Stored("=B1+1", 8))))
          .containsExactly("B1 result-stale");
    }

    @Test
    void isFoundInTexts() {
      assertThat(
              Findings.in(
                  Grid.sheet("Data")
                      .row(172.5, 0.5, new Stored("=LAB_RESULT(A1,B1,\"mm\")", "171.5 ± 0.5 mm"))))
          .contains("C1 result-stale");
    }

    @Test
    void isNotSaidOfEqualChangingOrUnstoredValues() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(
                          0.1,
                          new Stored("=A1*3", 0.3),
                          new Stored("=NOW()", 7),
                          "=A1+1",
                          new Stored("=LET(x,1,x)", 2),
                          new Stored("=A1>0", true))))
          .containsExactly("E1 not-checkable");
    }
  }
}
