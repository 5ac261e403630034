package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.checker.course.Course;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.catalogue.Catalogue;

/**
 * A part is missing only where the table was understood wholly; tables and numbers are invented.
 */
class DoubtsTest {

  private static MeasurementRecord only(Grid grid) {
    var records = Inspection.of(grid.workbook(), Catalogue.load(), Course.PLAIN).records();
    assertThat(records).hasSize(1);
    return records.get(0);
  }

  private static Finding of(String rule, Grid grid) {
    return Findings.in(grid.workbook()).stream()
        .filter(finding -> finding.rule().id().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  /** A heading that no student would write, over numbers. */
  private static Grid strange(Object unit, Object uncertainty) {
    return Grid.sheet("Records")
        .row("Quantity", "Value", "Unit", "Uncertainty", "Qwxz", "Rationale")
        .row("Arm", 172.5, unit, uncertainty, 0.5, REASON);
  }

  @Nested
  class BecomesANote {

    @Test
    void whereAHeadingWasNotUnderstood() {
      Grid grid = strange("mm", null);

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      Finding finding = of("uncertainty-missing", grid);
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.brief(finding)).isEqualTo("D2 uncertainty-missing");
      assertThat(Findings.found(finding))
          .startsWith("the record \"Arm\" has no uncertainty, or")
          .endsWith("the heading \"Qwxz\" was not understood (cell E2)");
      assertThat(Findings.expected(finding)).contains("heading", "\"tables\"", "profile");
    }

    @Test
    void forEachPartThatARecordLacks() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Qwxz", "Rationale")
              .row("Arm", null, 172.5, null, null, 0.5, null);

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      assertThat(Findings.in(grid.workbook()))
          .extracting(finding -> finding.rule().id())
          .contains("symbol-missing", "unit-missing", "uncertainty-missing", "rationale-missing");
      assertThat(Findings.in(grid.workbook()))
          .allSatisfy(
              finding -> {
                assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
                assertThat(Findings.found(finding)).contains("\"Qwxz\"");
              });
    }

    @Test
    void whateverTheCourseMakesOfTheRule() {
      String grave = "rules: {uncertainty-missing: {severity: error, points: 2}}";

      assertThat(Findings.in(strange("mm", null), grave))
          .singleElement()
          .satisfies(
              finding -> {
                assertThat(finding.rule().id()).isEqualTo("uncertainty-missing");
                assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
                assertThat(finding.points()).isZero();
              });
    }

    @Test
    void whereASmallNumberBesideItIsPartOfNoRecord() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Standard deviation", "Rationale")
              .row("Arm", 172.5, "mm", "=0.2+0.3", REASON);

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      assertNote("uncertainty-missing", grid, "the number in D2 may be the uncertainty");
    }

    @Test
    void whereATextInItsColumnIsAUnit() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Uncertainty", "Rationale")
              .row("Arm", 172.5, 0.5, REASON)
              .row(null, "mm");

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      assertThat(only(grid).unit()).isEmpty();
      assertNote("unit-missing", grid, "the text in B3 may be the unit");
    }

    /** Pixels are no unit that is known. */
    @Test
    void whereTheWordBehindItMayBeAUnitThatNobodyKnows() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", null, "Uncertainty", "Rationale")
              .row("Place", 172.5, "px", 2, REASON);

      assertThat(only(grid).unit()).isEmpty();
      assertNote("unit-missing", grid, "the text in C2 may be the unit");
    }

    @Test
    void whereItsHeadingEndsInBrackets() {
      Grid grid =
          Grid.sheet("Film")
              .row("time (s)", "hub (px)", "± (px)")
              .row(0.2, 84, 2)
              .row(0.5, 236, 2)
              .row(0.7, 385, 2);

      assertNote("unit-missing", grid, "the text in B1 may be the unit");
    }

    @Test
    void whereANumberStandsApartFromThoseWithUncertainties() {
      Grid grid = apart(true);

      assertNote("uncertainty-missing", grid, "may be given or looked up");
    }

    @Test
    void butNotWhereItStandsAmongThem() {
      Finding finding = of("uncertainty-missing", apart(false));

      assertThat(finding.rule().severity()).isEqualTo(Severity.ERROR);
    }

    private static Grid apart(boolean blankLine) {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Arm", 172.5, "mm", 0.5, REASON)
              .row("Spoke", 262.5, "mm", 0.5, REASON);
      return (blankLine ? grid.row() : grid).row("Pedal", 91.5, "mm", null, REASON);
    }

    private static void assertNote(String rule, Grid grid, String why) {
      Finding finding = of(rule, grid);
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding)).endsWith(why);
    }
  }

  /** Findings that compare parts of a table rest on what its columns were taken for. */
  @Nested
  class OfAComparison {

    private static void assertNote(String rule, Grid grid, String why) {
      Finding finding = of(rule, grid);
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.points()).isZero();
      assertThat(Findings.found(finding)).contains(why);
      assertThat(Findings.expected(finding)).contains("heading");
    }

    private static Grid total(String heading, Object size, Object total) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", heading, "Uncertainty", "Rationale")
          .row("Arm", 172.5, "mm", 0.5, size, total, REASON);
    }

    @Test
    void isANoteWhereAHeadingWasNotUnderstood() {
      assertThat(only(total("Qwxz", 0.2, 0.7)).contributions()).containsOnlyKeys(Field.READING);
      assertNote(
          "total-differs", total("Qwxz", 0.2, 0.7), "the heading \"Qwxz\" was not understood");
    }

    @Test
    void isANoteWhereAContributionIsNotSmallBesideTheValue() {
      assertThat(only(total("Physical", 172, 0.5)).contributions()).containsKey(Field.PHYSICAL);
      assertNote("total-differs", total("Physical", 172, 0.5), "E2 is not small beside its value");
    }

    @Test
    void isANoteWhereTheFormulaOfTheTotalTakesWhatIsNoPart() {
      Grid grid =
          total("Physical", 0.2, "=D2+E2+2*B5").row().row().row("The clamp moves it by", 0.1, "mm");

      assertNote("total-differs", grid, "its formula takes B5");
    }

    @Test
    void staysABlameWhereTheFormulaTakesPartsOnly() {
      Grid grid = total("Physical", 0.2, "=D2+2*E2");

      assertThat(only(grid).contributions()).hasSize(2);
      assertThat(of("total-differs", grid).rule().severity()).isEqualTo(Severity.ERROR);
    }

    private static Grid area(String uncertainty) {
      return Grid.sheet("Records")
          .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Length", "a", 80, "mm", 0.5, REASON)
          .row("Width", "b", 40, "mm", 0.5, REASON)
          .row("Area", "A", "=C2*C3", "mm²", uncertainty, null)
          .row()
          .row()
          .row("Half-widths as standard ones", "=E2/SQRT(3)", "=E3/SQRT(3)")
          .row("Relative ones", "=E2/C2", "=E3/C3");
    }

    @Test
    void isANoteWhereACarriedUncertaintyTakesOtherUncertaintiesThanTheRecorded() {
      assertNote("carried-differs", area("=SQRT((C2*C7)^2+(C3*B7)^2)"), "its formula takes C7");
    }

    @Test
    void staysABlameWhereItTakesTheRecordedOnesOnItsWay() {
      Grid grid = area("=C4*(B8+C8)/2");

      assertThat(of("carried-differs", grid).rule().severity()).isEqualTo(Severity.ERROR);
    }
  }

  @Nested
  class OfTexts {

    private static Grid place(Object place) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Zxwqk")
          .row("Arm", 172.5, "mm", 0.5, place);
    }

    @Test
    void underAHeadingThatWasNotUnderstoodMayBeThePart() {
      assertThat(only(place("as before")).number(Field.VALUE)).contains(172.5);
      Finding finding = of("rationale-missing", place("as before"));
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding))
          .contains("the texts under \"Zxwqk\" were not understood (cell E2)");
    }

    @Test
    void areNoneWhereTheColumnIsBlankInThatLine() {
      Finding finding = of("rationale-missing", place(null));
      assertThat(finding.rule().severity()).isEqualTo(Severity.WARNING);
    }
  }

  @Nested
  class StaysABlame {

    private static Grid whole(Object unit, Object uncertainty, Object reason) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Arm", 172.5, unit, uncertainty, reason);
    }

    @Test
    void whereTheTableIsUnderstoodWholly() {
      Grid grid = whole(null, null, null);

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      assertThat(of("unit-missing", grid).rule().severity()).isEqualTo(Severity.ERROR);
      assertThat(of("uncertainty-missing", grid).rule().severity()).isEqualTo(Severity.ERROR);
      assertThat(of("rationale-missing", grid).rule().severity()).isEqualTo(Severity.WARNING);
      assertThat(Findings.found(of("unit-missing", grid)))
          .isEqualTo("the record \"Arm\" has no unit");
    }

    @Test
    void whereOnlyAnotherTableOfTheSheetWasNotUnderstood() {
      Grid grid = whole(null, 0.5, REASON).row().row("Qwxz", "Zxwq").row(3.7, 4.1);

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      assertThat(of("unit-missing", grid).rule().severity()).isEqualTo(Severity.ERROR);
    }

    /** The column says where the uncertainty belongs; the radius is no other one. */
    @Test
    void whereTheColumnOfThePartIsThereAndBlank() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Radius (mm)", "Rationale")
              .row("Wheel", 622, "mm", null, "=B2/2", REASON);

      assertThat(only(grid).place(Field.UNCERTAINTY)).isPresent();
      assertThat(of("uncertainty-missing", grid).rule().severity()).isEqualTo(Severity.ERROR);
    }

    /** A mean is about as large as its readings, and follows from them. */
    @Test
    void whereTheSmallerNumbersAreWhatTheValueFollowsFrom() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Reading 1", "Reading 2", "Value", "Unit", "Rationale")
              .row("Arm", 172.4, 172.6, "=AVERAGE(B2:C2)", "mm", REASON);

      assertThat(only(grid).number(Field.VALUE)).contains(172.5);
      assertThat(of("uncertainty-missing", grid).rule().severity()).isEqualTo(Severity.ERROR);
    }

    @Test
    void withTheCoursesSeverityAndPoints() {
      String mild = "rules: {unit-missing: {severity: warning, points: 2}}";

      assertThat(Findings.in(whole(null, 0.5, REASON), mild))
          .singleElement()
          .satisfies(
              finding -> {
                assertThat(finding.rule().severity()).isEqualTo(Severity.WARNING);
                assertThat(finding.points()).isEqualTo(2);
              });
    }
  }
}
