package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.WorkbookFile;

/** Tables without a fault, in all the forms that students give them. Numbers are invented. */
class GoodTablesTest {

  @Test
  void withLabFunctionsAndTheRationaleBelow() {
    Grid grid =
        Findings.table()
            .row(
                "Crank arm",
                "a",
                172.5,
                "mm",
                1,
                "fine",
                2,
                "=LAB_READING(E2,F2,G2)",
                null,
                null,
                null,
                null,
                "=LAB_TOTAL(H2:L2)",
                "=LAB_RESULT(C2,M2,D2)")
            .row("Rationale", REASON)
            .row(
                "Tyre pressure",
                "p",
                6.2,
                "bar",
                0.5,
                "wide",
                1,
                "=LAB_READING(E4,F4,G4)",
                null,
                0.1,
                null,
                null,
                "=LAB_TOTAL(H4:L4)",
                "=LAB_RESULT(C4,M4,D4)")
            .row("Rationale", "Marks far apart; the maker states 0.1 bar.")
            .row(
                "Foam grip",
                "g",
                128,
                "mm",
                1,
                "fine",
                2,
                "=LAB_READING(E6,F6,G6)",
                "=LAB_FUZZY(2,2)",
                null,
                null,
                null,
                "=LAB_TOTAL(H6:L6)",
                "=LAB_RESULT(C6,M6,D6)")
            .row("Rationale", "Both edges are soft over 2 mm.")
            .row(
                "Spoke mass on a digital balance",
                "m",
                6.41,
                "g",
                null,
                null,
                null,
                null,
                null,
                "=LAB_DISPLAY(0.01,C8,0.5,1)",
                null,
                null,
                "=LAB_TOTAL(H8:L8)",
                "=LAB_RESULT(C8,M8,D8)")
            .row("Rationale", "Maker's specification: 0.5 % and one count.")
            .row(
                "Ten turns of the wheel, stopwatch",
                "t",
                12.4,
                "s",
                null,
                null,
                null,
                null,
                null,
                0.01,
                "=LAB_HANDTIMED(1)",
                null,
                "=LAB_TOTAL(H10:L10)",
                "=LAB_RESULT(C10,M10,D10)")
            .row("Rationale", "Started and stopped by hand.");

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withoutAnyLabFunction() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Wheel and crank, group 4")
            .row()
            .row("quantity", "value (mm)", "reading", "physical", "total", "rationale")
            .row("crank arm", 172.5, 0.5, 0.3, 0.8, "fine marks, two ends; ends rounded")
            .row("spoke", 291.3, 0.5, 0.1, 0.51, "fine marks, two ends, in quadrature")
            .row("grip", 128.0, 0.5, 1, "=C6+D6", "soft edges")
            .row("sum", "=SUM(B4:B6)");

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withHeadingsInAnyOrderAndColumnsBetween() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Unit", "remarks", "UNCERTAINTY", "who", "Value:", "Quantity", "Rationale")
            .row("bar", "second pump", 0.05, "Ada", 6.2, "Tyre pressure", "wide marks")
            .row("N", null, 0.5, "Ben", 14.5, "Brake lever", "spring scale, wide marks");

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withCommaDecimalsTypedAsText() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Quantity", "Value", "Unit", "Reading", "Physical", "Uncertainty", "Rationale")
            .row("Crank arm", "172,5", "mm", "0,5", "0,25", "0,75", REASON);

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withTheUncertaintyInTheValue() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Quantity", "Value", "Rationale")
            .row("Crank arm", "172.5 ± 0.5 mm", REASON)
            .row("Spoke", "291.3(5) mm", REASON);

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withSeveralTablesOnASheet() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row(
                "Quantity",
                "Value",
                "Unit",
                "Uncertainty",
                "Rationale",
                null,
                "Quantity",
                "Value",
                "Unit",
                "Uncertainty",
                "Rationale")
            .row("Arm", 172.5, "mm", 0.5, REASON, null, "Spoke", 291.3, "mm", 0.5, REASON)
            .row()
            .row("Symbol", "Uncertainty", "Value", "Unit", "Rationale")
            .row("p", 0.05, 6.2, "bar", "wide marks of the gauge");

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withACalculationBelow() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Crank arm", "a", 172.5, "mm", 0.5, REASON)
            .row()
            .row("circumference", null, "=2*PI()*C2")
            .row("half", null, "=C4/2")
            .row("number of spokes", null, 36);

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withACalculatedRowThatNeedsNoRationale() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Crank arm", "a", 172.5, "mm", 0.5, REASON)
            .row("Turning circle", "d", "=2*C2", "mm", 1, null);

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withListsThatAreNoMeasurements() {
    Grid grid =
        Grid.sheet("Constants")
            .row("Name", "Value", "Unit")
            .row("standard gravity", 9.80665, "m/s^2")
            .andSheet("Data")
            .row("time", "value")
            .row(1, 2.5)
            .row(2, 3.5)
            .andSheet("Parts")
            .row("Quantity", "Value", "Total")
            .row(36, 0.4, "=A2*B2");

    assertThat(Findings.inCells(grid)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Mean", "Total:", "Mittelwert", "Summe", "Moyenne :", "Suma", "Promedio"})
  void withARowThatSumsThemUp(String summary) {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Crank arm", 172.5, "mm", 0.8, "Fine marks, both ends by eye; ends rounded.")
            .row("Crank arm", 172.6, "mm", 0.8, "As above.")
            .row(summary, "=AVERAGE(B2:B3)");

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withNoHeadingsButLabFunctions() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row(
                172.5,
                "mm",
                "=LAB_READING(1,\"fine\",2)",
                0.3,
                "=LAB_TOTAL(C1:D1)",
                "=LAB_RESULT(A1,E1,B1)")
            .row("Fine marks, both ends judged by eye; ends a little rounded.")
            .row(
                6.2, "bar", "=LAB_READING(0.5)", null, "=LAB_TOTAL(C3:D3)", "=LAB_RESULT(A3,E3,B3)")
            .row("Wide marks of the gauge, one position.");

    assertThat(Findings.in(grid)).isEmpty();
  }

  @Test
  void withARangeNamedRecords() {
    Grid grid =
        Grid.sheet("Lab 3")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Arm", 172.5, "mm", 0.5, REASON)
            .row("Notes follow", 3, null, null, null)
            .name("Records_wheel", "'Lab 3'!$A$1:$E$2");

    assertThat(Findings.in(grid)).isEmpty();
  }

  // outside check: tables that LibreOffice 7.4.7 calculated and saved with the extension
  @ParameterizedTest
  @ValueSource(strings = {"lab-table.ods", "lab-table.xlsx", "lab-table.xls"})
  void withEveryKindOfContributionSavedByCalc(String name) throws Exception {
    var findings =
        Findings.in(WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name)));

    // two arguments are bad on purpose, to see what Calc stores for them
    assertThat(findings)
        .extracting(finding -> finding.cell() + " " + finding.rule().id())
        .containsExactly("More work.C26 error-cell", "More work.D26 error-cell");
  }

  // outside check: the same records with planted faults
  @ParameterizedTest
  @ValueSource(strings = {"faulty-lab-table.ods", "faulty-lab-table.xlsx", "faulty-lab-table.xls"})
  void showEachPlantedFaultWhereItIs(String name) throws Exception {
    var findings =
        Findings.in(WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name)));

    assertThat(findings)
        .extracting(finding -> finding.cell().place() + " " + finding.rule().id())
        .containsExactly(
            "D2 unit-missing",
            "A3 rationale-missing",
            "H4 reading-differs",
            "H6 length-one-end",
            "H8 display-reading",
            "K10 reaction-missing",
            "M12 total-differs",
            "M12 typed-over",
            "N12 digits-unmatched",
            "N12 result-differs",
            "N12 typed-over");
  }

  // outside check: files that LibreOffice 7.4.7 saved with the extension
  @ParameterizedTest
  @ValueSource(strings = {"good.ods", "good.xlsx"})
  void asCalcSavedThemShowOnlyThePlantedErrors(String name) throws Exception {
    var findings =
        Findings.in(WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name)));

    assertThat(findings.stream().flatMap(Finding::apart))
        .extracting(finding -> finding.cell().place() + " " + finding.rule().id())
        .containsExactly("H2 error-cell", "E5 error-cell", "E6 error-cell", "E8 error-cell");
  }
}
