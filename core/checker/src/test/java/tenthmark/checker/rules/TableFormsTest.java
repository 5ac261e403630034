package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.formula.CellRange;

/** The forms of tables: each form once without a fault and once with one. Numbers are invented. */
class TableFormsTest {

  @Nested
  class RecordsInColumns {

    private static Grid columns(Object reading, Object total) {
      return Grid.sheet("Lab 3")
          .row("Wheel and crank")
          .row()
          .row("Quantity", "Crank arm", "Spoke", "Foam grip")
          .row("Symbol", "a", "s", "g")
          .row("Value", 172.5, 291.3, 128)
          .row("Unit", "mm", "mm", "mm")
          .row("Reading", 0.5, 0.5, reading)
          .row("Physical", 0.3, 0.1, 1)
          .row("Uncertainty", 0.8, 0.6, total)
          .row("Rationale", REASON, REASON, REASON);
    }

    @Test
    void areReadColumnByColumn() {
      assertThat(Findings.in(columns(0.5, 1.5))).isEmpty();
    }

    @Test
    void showTheirFaults() {
      assertThat(Findings.in(columns(0.5, 0.7))).containsExactly("D9 total-differs");
      assertThat(Findings.in(columns(0.5, null))).containsExactly("D9 uncertainty-missing");
    }

    @Test
    void areCarriedToo() {
      Grid grid =
          columns(0.5, 1.5)
              .row()
              .row("Result", "=B5+C5")
              .row("Half", "=LAB_CARRY(B12,B5:B5,B9:B9)");

      assertThat(Findings.in(grid)).containsExactly("B13 carried-differs");
    }

    @Test
    void mayBeOneAlone() {
      assertThat(
              Findings.in(
                  Grid.sheet("Lab 3")
                      .row("Value", 172.5)
                      .row("Unit", "mm")
                      .row("Uncertainty", null)
                      .row("Rationale", REASON)))
          .containsExactly("B3 uncertainty-missing");
    }

    @Test
    void areNotSeenInAGlossary() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Words")
                      .row("Quantity", "what is measured")
                      .row("Value", "the number that is read")
                      .row("Unit", "what the number counts")
                      .row("Uncertainty", "how far the value may be off")
                      .row("Rationale", "why the uncertainty is what it is")))
          .isEmpty();
    }

    @Test
    void areNotSeenInTheRowsOfATable() {
      assertThat(
              Findings.in(
                  Grid.sheet("Lab 3")
                      .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
                      .row("Reading", 172.5, "mm", 0.5, REASON)
                      .row("Physical", 172.5, "mm", 0.5, REASON)
                      .row("Value", 172.5, "mm", 0.5, REASON)))
          .isEmpty();
    }
  }

  @Nested
  class MergedHeadings {

    private static Grid grouped(Object total) {
      return Grid.sheet("Lab 3")
          .row("Quantity", "Value", "Unit", "Uncertainty", null, null, "Rationale")
          .row(null, null, null, "reading", "physical", "total")
          .merge(3, 0, 5, 0)
          .merge(0, 0, 0, 1)
          .merge(1, 0, 1, 1)
          .row("Crank arm", 172.5, "mm", 0.5, 0.3, total, REASON);
    }

    @Test
    void takeTheirPartsFromTheRowBelow() {
      assertThat(Findings.in(grouped(0.8))).isEmpty();
      assertThat(Findings.in(grouped(0.7))).containsExactly("F3 total-differs");
      assertThat(Findings.in(grouped(null))).containsExactly("F3 uncertainty-missing");
    }

    @Test
    void mayBeATitleOverTheTable() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Measurements of the wheel")
              .merge(0, 0, 4, 0)
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Crank arm", 172.5, "mm", null, REASON);

      assertThat(Findings.in(grid)).containsExactly("D3 uncertainty-missing");
    }

    @Test
    void mayCoverValueAndUnitWithoutParts() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Value", null, "Uncertainty (mm)", "Rationale")
              .merge(1, 0, 2, 0)
              .row("Crank arm", 172.5, "mm", 0.5, REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }
  }

  @Nested
  class UnitsBelowTheHeadings {

    @ParameterizedTest
    @CsvSource({"mm, mm", "(mm), (mm)", "[mm], [mm]"})
    void count(String value, String uncertainty) {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Value", "Uncertainty", "Rationale")
              .row(null, value, uncertainty)
              .row("Crank arm", 172.5, 0.5, REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void areNotTakenFromARowWithNumbers() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Symbol", "Value", "Uncertainty", "Rationale")
              .row("arm", "a", 172.5, 0.5, REASON);

      assertThat(Findings.in(grid)).containsExactly("C2 unit-missing");
    }
  }

  @Nested
  class ValueAndUnitAlone {

    private static Grid list(String sheet, String heading) {
      return Grid.sheet(sheet)
          .row(heading, "Value", "Unit")
          .row("Crank arm", 172.5, "mm")
          .row("Rationale", REASON);
    }

    @Test
    void areRecordsWithoutUncertainty() {
      assertThat(Findings.in(list("Lab 3", "Quantity"))).containsExactly("B2 uncertainty-missing");
    }

    @ParameterizedTest
    @CsvSource({"Constants, Quantity", "Given values, Quantity", "Lab 3, Name", "Lab 3, Part"})
    void areNotWhereTheyAreGiven(String sheet, String heading) {
      assertThat(Findings.inCells(list(sheet, heading))).isEmpty();
    }

    @Test
    void areNotUnderATitleThatSaysSo() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Accepted values")
              .row("Quantity", "Value", "Unit")
              .row("standard gravity", 9.80665, "m/s^2");

      assertThat(Findings.inCells(grid)).isEmpty();
    }
  }

  @Nested
  class HiddenSheets {

    @Test
    void areLeftAloneWithANote() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Total", "=Spare!B2*2")
              .andHiddenSheet("Spare")
              .row("Quantity", "Value", "Unit", "Uncertainty")
              .row("Crank arm", 172.5, null, null, "=1/0");

      assertThat(Findings.inCells(grid)).containsExactly("A1 sheet-hidden");
    }
  }

  @Nested
  class SymbolMissing {

    @Test
    void isANoteWhereTheTableHasSymbols() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Crank arm", null, 172.5, "mm", 0.5, REASON);

      assertThat(Findings.in(grid)).containsExactly("B2 symbol-missing");
      assertThat(Findings.only(grid).rule().severity()).isEqualTo(Severity.NOTE);
    }
  }

  @Nested
  class Near {

    @Test
    void aMatrixUnderHeadingsIsNoRecord() {
      Grid.Matrix matrix =
          new Grid.Matrix("=LAB_CARRYTABLE(C4,C2:C3,E2:E3)", new CellRange("Lab 3", 0, 6, 5, 8));
      Object[] row = {matrix, matrix, matrix, matrix, matrix, matrix};
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Crank arm", "a", 172.5, "mm", 0.3, REASON)
              .row("Pedal axle", "b", 55.2, "mm", 0.4, REASON)
              .row("Reach", "R", "=C2+C3", "mm", 0.7)
              .row()
              .row("Input", "Value", "Uncertainty", "Sensitivity", "Contribution", "Share")
              .row(row)
              .row(row)
              .row(row);

      assertThat(Findings.in(grid)).isEmpty();
    }

    /** A quarter of a division has one decimal more than the reading. */
    @ParameterizedTest
    @ValueSource(doubles = {172.4, 172.5, 172})
    void aFineScaleIsReadToATenth(double value) {
      Grid grid =
          Grid.sheet("Lab 3")
              .row(
                  "Quantity",
                  "Value",
                  "Unit",
                  "Division",
                  "Spacing",
                  "Ends",
                  "Reading",
                  "Uncertainty",
                  "Rationale")
              .row("Needle position", value, "mm", 1, "fine", 1, 0.25, 0.25, REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void commaDecimalsWithUnits() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Value", "Reading", "Physical", "Uncertainty", "Rationale")
              .row("Crank arm", "172,5 mm", "0,5 mm", "0,25 mm", "0,75 mm", REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void twoTablesBelowEachOtherInOneColumn() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Crank arm", 172.5, "mm", 0.5, REASON)
              .row("Value", "Quantity", "Unit", "Uncertainty", "Rationale")
              .row(291.3, "Spoke", "mm", 0.5, REASON)
              .row("Uncertainty", "Unit", "Value", "Quantity", "Rationale")
              .row(0.5, "mm", 128, "Grip", REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void aTableWithManyColumnsOfTheStudentsOwn() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row(
                  "No.",
                  "Quantity",
                  "Who",
                  "When",
                  "Value",
                  "read twice?",
                  "Unit",
                  "Reading",
                  "Physical",
                  "Uncertainty",
                  "checked",
                  "Rationale",
                  "Remarks")
              .row(
                  1,
                  "Crank arm",
                  "Ada",
                  45000,
                  172.5,
                  true,
                  "mm",
                  0.5,
                  0.1,
                  "=H2+I2",
                  "Ben",
                  REASON,
                  "old crank")
              .row(
                  2, "Spoke", "Ben", 45001, 291.3, false, "mm", 0.5, 0.1, "=H3+I3", "Ada", REASON,
                  null);

      assertThat(Findings.in(grid)).isEmpty();
    }
  }

  @Nested
  class NameOfTheQuantity {

    private static Grid headed(String first) {
      return Grid.sheet("Lab 3")
          .row(first, "Value", "Uncertainty", "Unit", "Why")
          .row("Chain, 24 links", 305.4, 1.1, "mm", REASON)
          .row("Spoke", 292, 2.2, null, REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Quantity", "Name of quantity", "Results", "Result", "What we did"})
    void standsInTheFirstColumnWhateverItsHeading(String first) {
      Finding finding = Findings.only(headed(first));

      assertThat(Findings.brief(finding)).isEqualTo("D3 unit-missing");
      assertThat(Findings.found(finding)).isEqualTo("the record \"Spoke\" has no unit");
    }

    @Test
    void standsInTheFirstColumnWithoutAnyHeading() {
      assertThat(Findings.found(Findings.only(headed(null))))
          .isEqualTo("the record \"Spoke\" has no unit");
    }

    @Test
    void isNotTheNumberOfARun() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("No.", "Value", "Uncertainty", "Unit", "Why")
              .row(1, 305.4, 1.1, null, REASON);

      assertThat(Findings.found(Findings.only(grid))).isEqualTo("the record at B2 has no unit");
    }
  }

  @Nested
  class ValueUnderItsSymbol {

    private static Grid headed(String value, double total) {
      return Grid.sheet("Lab 3")
          .row("Quantity", value, "Reading (mm)", "Physical (mm)", "Uncertainty (mm)", "Why")
          .row("Chain, 24 links", 305.4, 0.5, 0.4, total, REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"L (mm)", "L / mm", "Length [mm]", "Länge in mm"})
    void isReadWithItsUnit(String value) {
      assertThat(Findings.in(headed(value, 0.9))).isEmpty();
      assertThat(Findings.in(headed(value, 0.8))).containsExactly("E2 total-differs");
    }

    @Test
    void isReadUnderWordsInBracketsToo() {
      assertThat(Findings.in(headed("Length (left)", 0.9))).isEmpty();
      assertThat(Findings.in(headed("Length (left)", 0.8))).containsExactly("E2 total-differs");
    }

    @Test
    void isNotAnotherColumnBesideTheValue() {
      assertThat(
              Findings.in(
                  Grid.sheet("Lab 3")
                      .row(
                          "Quantity", "Load (kg)", "Value", "Unit", "Reading", "Uncertainty", "Why")
                      .row("Chain, 24 links", 5, 305.4, null, 0.5, 0.5, REASON)))
          .containsExactly("D2 unit-missing");
    }
  }

  @Nested
  class Remarks {

    private static Grid headed(String heading, Object text) {
      return Grid.sheet("Lab 3")
          .row("Quantity", "Value", "± Reading", "+/-", "Unit", heading)
          .row("Chain, 24 links", 305.4, 0.5, 0.5, "mm", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Comment", "Remarks", "Bemerkung", "Why", "Erklärung", "Observación"})
    void areARationale(String heading) {
      assertThat(Findings.in(headed(heading, "judged by eye"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Comment, B2", "Why, F2"})
    void showWhereOneIsMissing(String heading, String place) {
      assertThat(Findings.in(headed(heading, null))).containsExactly(place + " rationale-missing");
    }

    @Test
    void makeNoMeasurementsOfConstants() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Lab 3")
                      .row("Name", "Value", "Unit", "Comment")
                      .row("g", 9.81, "m/s^2", "from the book")))
          .isEmpty();
    }
  }

  @Nested
  class PreparedTables {

    private static Grid prepared(Object second) {
      return Grid.sheet("Lab 3")
          .row("Quantity", "Value", "Unit", "Instrument", "Uncertainty", "Result")
          .row("Spoke", 292, "mm", 0.5, "=D2", "=LAB_RESULT(B2,E2,C2)")
          .row(REASON)
          .row("Diameter", null, "mm", "=LAB_DISPLAY(0.01)", "=D4", "=LAB_RESULT(B4,E4,C4)")
          .row()
          .row("Speed", second, "km/h", "=LAB_DISPLAY(0.1)", "=D6", "=LAB_RESULT(B6,E6,C6)");
    }

    @Test
    void areNoRecordsUntilTheirValuesAreTyped() {
      assertThat(Findings.in(prepared(null))).isEmpty();
    }

    @Test
    void ownNoRationaleForWhatWillBeCalculated() {
      Grid grid =
          Grid.sheet("Lab 3")
              .row("Quantity", "Value", "Unit", "Instrument", "Uncertainty")
              .row("Chain", null, "mm", 0.2, "=D2")
              .row("Pitch", "=B2/24", "mm", null, "=E2/24")
              .row("Time", "=AVERAGE(H1:H5)", "s", 0.2, "=D4");

      assertThat(Findings.in(grid)).containsExactly("B4 error-cell");
    }

    @Test
    void goOnBelowLinesThatWait() {
      Finding finding = Findings.only(prepared(15.2));

      assertThat(Findings.brief(finding)).isEqualTo("B6 rationale-missing");
      assertThat(Findings.found(finding)).startsWith("the record \"Speed\"");
    }
  }

  @Nested
  class RationaleBeneath {

    private static Grid beneath(String first, String second) {
      return Grid.sheet("Lab 3")
          .row("Quantity", "Value", "Unit", "Instrument", "Uncertainty")
          .row("Spoke", 292, "mm", 0.5, 0.5)
          .row(first)
          .row("Diameter", 2.02, "mm", 0.02, 0.02)
          .row(second);
    }

    @Test
    void mayBeShortWhereOthersStandBeneathToo() {
      assertThat(Findings.in(beneath(REASON, "caliper card"))).isEmpty();
    }

    @Test
    void isNotAnyShortTextNorAWord() {
      assertThat(Findings.in(beneath("see board", "caliper card")))
          .containsExactly("B2 rationale-missing", "B4 rationale-missing");
      assertThat(Findings.in(beneath(REASON, "Speed"))).containsExactly("B4 rationale-missing");
    }
  }

  @Nested
  class UnitAfterTheName {

    private static Grid named(String quantity) {
      return Grid.sheet("Lab 3")
          .row("Quantity", "Value", "Uncertainty", "Why")
          .row(quantity, 33.1, 0.4, REASON);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"Length / mm", "Zeit in s", "temps en s", "Force [N]", "Spring rate (N/mm)"})
    void isTheUnitOfTheRecord(String quantity) {
      assertThat(Findings.in(named(quantity))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Length", "Mass (m)", "Length (left)", "Time in air", "Spoke / left"})
    void isNotASymbolOrAWord(String quantity) {
      assertThat(Findings.in(named(quantity))).containsExactly("B2 unit-missing");
    }

    @ParameterizedTest
    @CsvSource({"'1', true", "mm, false"})
    void mayBeLeftOutOfAPureNumberOfTheCourse(String unit, boolean pure) {
      String profile = "quantities: [{name: Rolling resistance, unit: '%s'}]".formatted(unit);

      assertThat(Findings.in(named("Rolling resistance"), profile).isEmpty()).isEqualTo(pure);
    }
  }
}
