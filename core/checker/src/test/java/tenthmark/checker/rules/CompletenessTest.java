package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

class CompletenessTest {

  private static Grid small() {
    return Grid.sheet("Records").row("Quantity", "Value", "Unit", "Uncertainty", "Rationale");
  }

  @Nested
  class UncertaintyMissing {

    @Test
    void isFoundInABlankCell() {
      Finding finding = Findings.only(small().row("Arm", 172.5, "mm", null, REASON));

      assertThat(finding.cell().toString()).isEqualTo("Records.D2");
      assertThat(finding.rule().id()).isEqualTo("uncertainty-missing");
      assertThat(finding.rule().severity()).isEqualTo(Severity.ERROR);
      assertThat(Findings.found(finding)).isEqualTo("the record \"Arm\" has no uncertainty");
      assertThat(Findings.expected(finding)).isEqualTo("an uncertainty in the unit of the value");
    }

    @Test
    void isFoundAtTheValueWhereThereIsNoColumn() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Rationale")
                      .row("Arm", 172.5, "mm", REASON)))
          .containsExactly("B2 uncertainty-missing");
    }

    @Test
    void isFoundWhereAFormulaGivesAnEmptyText() {
      assertThat(Findings.in(small().row("Arm", 172.5, "mm", "=IF(B2>0,\"\",1)", REASON)))
          .containsExactly("D2 uncertainty-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1/0", "=LET(x,1,x)"})
    void isNotSaidOfACellInErrorOrOneThatCannotBeChecked(String formula) {
      assertThat(Findings.in(small().row("Arm", 172.5, "mm", formula, REASON)))
          .hasSize(1)
          .doesNotContain("D2 uncertainty-missing");
    }

    @Test
    void isNotSaidOfAZero() {
      assertThat(Findings.in(small().row("Spokes", 36, "1", 0, "Counted, so exact."))).isEmpty();
    }
  }

  @Nested
  class UnitMissing {

    @Test
    void isFoundInABlankCell() {
      assertThat(Findings.in(small().row("Arm", 172.5, null, 0.5, REASON)))
          .containsExactly("C2 unit-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Value (mm)", "value [mm]", "Value / mm", "VALUE (mm):"})
    void isNotSaidWhereTheHeadingHasIt(String heading) {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", heading, "Uncertainty", "Rationale")
                      .row("Arm", 172.5, 0.5, REASON)))
          .isEmpty();
    }

    @Test
    void isNotSaidWhereItStandsBesideTheNumber() {
      assertThat(Findings.in(small().row("Arm", "172.5 mm", null, 0.5, REASON))).isEmpty();
    }

    @Test
    void isNotSaidOfAUnitThatIsTheNumberOne() {
      assertThat(Findings.in(small().row("Gear ratio", 2.75, 1, 0.01, REASON))).isEmpty();
    }

    @Test
    void isFoundWhereTheHeadingOnlyHasAWord() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value (both ends)", "Uncertainty", "Rationale")
                      .row("Arm", 172.5, 0.5, REASON)))
          .containsExactly("B2 unit-missing");
    }
  }

  @Nested
  class RationaleMissing {

    @Test
    void isFoundInItsColumn() {
      assertThat(Findings.in(small().row("Arm", 172.5, "mm", 0.5, null)))
          .containsExactly("E2 rationale-missing");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "The reading uncertainty is 0.5 mm (cause not given). The total is 0.5 mm.",
          "Die Ableseunsicherheit ist 0,5 mm (Ursache nicht angegeben)."
        })
    void isFoundWhereTheTextSaysThatACauseIsNotGiven(String text) {
      Finding finding = Findings.only(small().row("Arm", 172.5, "mm", 0.5, text));

      assertThat(finding.rule().id()).isEqualTo("rationale-missing");
      assertThat(Findings.found(finding)).contains("cause is not given");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Human error.", "Messfehler", "erreur humaine", "error de medida"})
    void isANoteWhereTheTextSaysNothing(String text) {
      Finding finding = Findings.only(small().row("Arm", 172.5, "mm", 0.5, text));

      assertThat(finding.rule().id()).isEqualTo("rationale-missing");
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding)).contains('"' + text + '"');
    }

    @Test
    void isFoundUnderARecordWhereOnlyTheWordStands() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Uncertainty")
                      .row("Arm", 172.5, "mm", 0.5)
                      .row("Rationale")))
          .containsExactly("A3 rationale-missing");
    }

    @Test
    void isFoundAtEachRecordWithoutARowUnderIt() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Uncertainty")
                      .row("Arm", 172.5, "mm", 0.5)
                      .row("Spoke", 291.3, "mm", 0.5)
                      .row("Rationale: fine marks, two ends")
                      .row("Grip", 128, "mm", 0.5)
                      .row("Rationale: soft edges, two ends")))
          .containsExactly("B2 rationale-missing");
    }

    /** A reason below the last record is one for the whole table. */
    @Test
    void isNotSaidWhereOneReasonStandsBelowTheTable() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Uncertainty")
                      .row("Arm", 172.5, "mm", 0.5)
                      .row("Spoke", 291.3, "mm", 0.5)
                      .row("Rationale: fine marks, two ends")))
          .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "Rationale: fine marks",
          "rationale - fine marks",
          "The marks are fine and both ends were judged."
        })
    void isNotSaidWhereTheRowUnderTheRecordHasIt(String text) {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Uncertainty")
                      .row("Arm", 172.5, "mm", 0.5)
                      .row(text)))
          .isEmpty();
    }
  }
}
