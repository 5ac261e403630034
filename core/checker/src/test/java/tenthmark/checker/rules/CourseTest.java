package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** What a course's profile adds to the rules. Students and numbers are invented. */
class CourseTest {

  private static final String ARM =
      """
      quantities:
        - name: crank arm length
          symbol: L
          also: [crank length, length of the crank]
          unit: mm
      """;

  private static Grid small() {
    return Grid.sheet("Records")
        .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale");
  }

  private static Grid arm(Object value, String unit, Object uncertainty) {
    return small().row("Crank arm length", "L", value, unit, uncertainty, REASON);
  }

  private static List<String> briefly(Grid grid, String profile) {
    return Findings.in(grid, profile).stream().map(Findings::brief).toList();
  }

  private static Finding only(Grid grid, String profile) {
    List<Finding> findings = Findings.in(grid, profile);
    assertThat(findings).hasSize(1);
    return findings.get(0);
  }

  @Nested
  class QuantityMissing {

    @Test
    void isFoundInTheFirstCellOfTheWorkbook() {
      Finding finding =
          only(small().row("Foam grip", "g", 128, "mm", 1, REASON).andSheet("More"), ARM);

      assertThat(finding.rule().id()).isEqualTo("quantity-missing");
      assertThat(finding.cell()).hasToString("Records.A1");
      assertThat(Findings.found(finding)).isEqualTo("no record is named \"crank arm length\"");
      assertThat(Findings.expected(finding)).isEqualTo("a record of it, symbol L, in mm");
    }

    @Test
    void isFoundInAWorkbookWithoutAnyRecord() {
      assertThat(Findings.inCells(Grid.sheet("Notes").row("Rain all day"), ARM))
          .extracting(Findings::brief)
          .containsExactly("A1 quantity-missing");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "Crank arm length",
          "CRANK-ARM LENGTH:",
          "crank length",
          "Length of the crank (axle)"
        })
    void isNotSaidOfARecordByAnyOfItsNames(String name) {
      assertThat(briefly(small().row(name, null, 172.5, "mm", 0.5, REASON), ARM))
          .containsExactly("B2 symbol-missing");
    }

    @Test
    void isNotSaidWhereTheSymbolIsThere() {
      assertThat(briefly(small().row("Arm", "L", 172.5, "mm", 0.5, REASON), ARM)).isEmpty();
      assertThat(
              briefly(
                  small()
                      .row("Arm, left", "L", 172.5, "mm", 0.5, REASON)
                      .row("Arm, right", "L", 172, "mm", 0.5, REASON),
                  ARM))
          .isEmpty();
    }

    @Test
    void tellsUpperFromLowerCaseInSymbols() {
      assertThat(briefly(small().row("Arm", "l", 172.5, "mm", 0.5, REASON), ARM))
          .containsExactly("A1 quantity-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Crank arm length", "Crank arm length / mm", "Crank length in mm:"})
    void pointsToTheNameWhereItStandsWithoutAValue(String name) {
      List<Finding> findings =
          Findings.inCells(Grid.sheet("Notes").row("Lab 3").row(null, name), ARM);

      assertThat(findings).hasSize(1);
      Finding finding = findings.get(0);
      assertThat(Findings.brief(finding)).isEqualTo("B2 quantity-missing");
      assertThat(Findings.found(finding))
          .isEqualTo("\"crank arm length\" stands here, but no number is recognised as its value");
    }

    @Test
    void isSaidOfARowThatWaitsForItsValue() {
      assertThat(briefly(small().row("Crank arm length", "L", null, "mm", 0.5, null), ARM))
          .containsExactly("A2 quantity-missing");
    }

    @Test
    void isNotSaidOfAQuantityThatIsNotRequired() {
      assertThat(
              briefly(
                  small().row("Foam grip", "g", 128, "mm", 1, REASON), ARM + "    required: false"))
          .isEmpty();
    }
  }

  @Nested
  class Unit {

    @Test
    void ofAnotherDimensionIsAnError() {
      Finding finding = only(arm(172.5, "g", 0.5), ARM);

      assertThat(Findings.brief(finding)).isEqualTo("D2 unit-unlike-expected");
      assertThat(finding.rule().severity()).isEqualTo(Severity.ERROR);
      assertThat(Findings.found(finding)).isEqualTo("the unit of \"Crank arm length\" is g");
      assertThat(Findings.expected(finding)).isEqualTo("mm or a unit that converts to it");
    }

    @Test
    void ofTheSameDimensionIsANote() {
      Finding finding = only(arm(17.25, "cm", 0.05), ARM);

      assertThat(Findings.brief(finding)).isEqualTo("D2 unit-other-than-expected");
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding)).isEqualTo("\"Crank arm length\" is 17.25 cm");
      assertThat(Findings.expected(finding)).isEqualTo("the same in mm: 172.5 mm");
    }

    @Test
    void thatIsNotKnownIsANoteAndNothingElseIsSaid() {
      Finding finding = only(arm(172.5, "spans", 0.5), ARM + "    accepted: 5");

      assertThat(Findings.brief(finding)).isEqualTo("D2 unit-unknown");
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding))
          .isEqualTo("the unit of \"Crank arm length\" is not known: \"spans\" is no known unit");
    }

    @Test
    void thatIsMissingIsTheConcernOfAnotherRule() {
      assertThat(briefly(arm(172.5, null, 0.5), ARM)).containsExactly("D2 unit-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kg m^2", "kg*m²", "m2 kg", "N m s²"})
    void inAnotherSpellingIsRight(String unit) {
      assertThat(
              briefly(
                  small().row("Wheel inertia", "I", 0.12, unit, 0.01, REASON),
                  "quantities: [{name: wheel inertia, unit: kg·m²}]"))
          .isEmpty();
    }

    @Test
    void ofTheHeadingCounts() {
      assertThat(
              briefly(
                  Grid.sheet("Records")
                      .row("Quantity", "Value (cm)", "Uncertainty (cm)", "Rationale")
                      .row("Crank arm length", 17.25, 0.05, REASON),
                  ARM))
          .containsExactly("B2 unit-other-than-expected");
    }
  }

  @Nested
  class AcceptedMissed {

    private static final String ACCEPTED = ARM + "    accepted: 172.5\n    uncertainty: 0.5\n";

    @Test
    void isFoundBeyondTheUncertainties() {
      Finding finding = only(arm(173.6, "mm", 0.5), ACCEPTED);

      assertThat(Findings.brief(finding)).isEqualTo("C2 accepted-missed");
      assertThat(Findings.found(finding)).isEqualTo("\"Crank arm length\" is 173.6 ± 0.5 mm");
      assertThat(Findings.expected(finding))
          .isEqualTo(
              "within 1 mm of the accepted 172.5 ± 0.5 mm (straight total of 0.5 and 0.5);"
                  + " the difference is 1.1 mm");
    }

    @ParameterizedTest
    @ValueSource(doubles = {172.5, 173.5, 171.5})
    void isNotSaidUpToTheSumOfBoth(double value) {
      assertThat(briefly(arm(value, "mm", 0.5), ACCEPTED)).isEmpty();
    }

    /** 0.5 and 0.5 in quadrature are 0.7071 (JCGM 100:2008, 5.1.2). */
    @Test
    void followsTheConvention() {
      assertThat(briefly(arm(173.3, "mm", 0.5), ACCEPTED)).isEmpty();
      Finding finding = only(arm(173.3, "mm", 0.5), "convention: standard\n" + ACCEPTED);
      assertThat(Findings.expected(finding))
          .isEqualTo(
              "within 0.707107 mm of the accepted 172.5 ± 0.5 mm (quadrature total of 0.5 and"
                  + " 0.5); the difference is 0.8 mm");
    }

    @Test
    void allowsTheGapOfTheProfile() {
      assertThat(briefly(arm(174.5, "mm", 0.5), ACCEPTED + "    gap: 2")).isEmpty();
      Finding finding = only(arm(174.6, "mm", 0.5), ACCEPTED + "    gap: 2");
      assertThat(Findings.expected(finding))
          .startsWith("within 2 mm of the accepted 172.5 ± 0.5 mm (2 x straight total of");
    }

    @Test
    void convertsValueAndUncertainty() {
      assertThat(briefly(arm(17.35, "cm", 0.05), ACCEPTED))
          .containsExactly("D2 unit-other-than-expected");
      assertThat(briefly(arm(17.36, "cm", 0.05), ACCEPTED))
          .containsExactly("C2 accepted-missed", "D2 unit-other-than-expected");
      assertThat(
              briefly(
                  Grid.sheet("Records")
                      .row("Quantity", "Value (mm)", "Uncertainty (cm)", "Rationale")
                      .row("Crank arm length", 173.4, 0.04, REASON),
                  ACCEPTED))
          .isEmpty();
    }

    /** t/°F = 1.8 t/°C + 32, differences without the 32 (NIST SP 811, B.8; from memory). */
    @Test
    void shiftsATemperatureButNotItsUncertainty() {
      String room = "quantities: [{name: room, unit: °C, accepted: 20, uncertainty: 0.5}]";
      Grid grid = small().row("Room", "t", 69.8, "°F", 0.9, REASON);

      assertThat(briefly(grid, room)).containsExactly("D2 unit-other-than-expected");
      assertThat(briefly(small().row("Room", "t", 69.9, "°F", 0.9, REASON), room))
          .containsExactly("C2 accepted-missed", "D2 unit-other-than-expected");
    }

    @Test
    void comparesCountedThingsExactly() {
      String spokes = "quantities: [{name: spokes, unit: 1, accepted: 36}]";

      assertThat(briefly(small().row("Spokes", "n", 36, "1", 0, REASON), spokes)).isEmpty();
      assertThat(briefly(small().row("Spokes", "n", 35, "1", 0, REASON), spokes))
          .containsExactly("C2 accepted-missed");
    }

    @Test
    void isNotSaidWithoutAnUncertaintyOrInPercentOfTheValue() {
      assertThat(briefly(arm(180, "mm", null), ACCEPTED)).containsExactly("E2 uncertainty-missing");
      assertThat(
              briefly(
                  Grid.sheet("Records")
                      .row("Quantity", "Value (mm)", "Uncertainty (%)", "Rationale")
                      .row("Crank arm length", 180, 0.5, REASON),
                  ACCEPTED))
          .doesNotContain("B2 accepted-missed");
    }

    @Test
    void isNotSaidOfARecordThatCannotBeTold() {
      assertThat(
              briefly(
                  small()
                      .row("Arm, left", "L", 190, "mm", 0.5, REASON)
                      .row("Arm, right", "L", 190, "mm", 0.5, REASON),
                  ACCEPTED))
          .isEmpty();
    }
  }

  @Nested
  class CalculationTypedIn {

    @Test
    void isNotSaidOfAFormulaWhoseCellsWaitForTheirValues() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty")
              .row("Force", "F", null, "N", 0.1)
              .row("spring constant", "k", "=C2/0.02", "N/m", 5);

      assertThat(briefly(grid, SPRING)).doesNotContain("C3 calculation-typed-in");
    }

    private static final String SPRING =
        "quantities: [{name: spring constant, symbol: k, unit: N/m, origin: calculated}]";

    private static Grid table(Object value) {
      return small()
          .row("Force", "F", 12.5, "N", 0.1, REASON)
          .row("Extension", "x", 0.02, "m", 0.001, REASON)
          .row("Spring constant", "k", value, "N/m", 40, REASON);
    }

    @Test
    void isFoundOfATypedNumber() {
      Finding finding = only(table(625), SPRING);

      assertThat(Findings.brief(finding)).isEqualTo("C4 calculation-typed-in");
      assertThat(Findings.found(finding)).isEqualTo("\"Spring constant\" is typed in");
      assertThat(Findings.expected(finding))
          .isEqualTo("a formula that refers to the measured values");
    }

    @Test
    void isFoundOfAFormulaOfNumbers() {
      assertThat(Findings.found(only(table("=12.5/0.02"), SPRING)))
          .isEqualTo("\"Spring constant\" is calculated from typed-in numbers alone");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=C2/C3", "=ROUND(C2/C3,0)", "=LET(f,C2,f/C3)"})
    void isNotSaidOfAFormulaThatRefersToCells(String formula) {
      assertThat(briefly(table(formula), SPRING)).doesNotContain("C4 calculation-typed-in");
    }

    @Test
    void isNotSaidOfAQuantityOfAnyOrigin() {
      assertThat(briefly(table(625), "quantities: [{name: spring constant, unit: N/m}]")).isEmpty();
    }
  }

  @Nested
  class PhysicalMissing {

    private static final String FUZZY =
        "quantities: [{name: foam grip, symbol: g, unit: mm, physical: true}]";

    private static Grid grip(Object physical, Object total) {
      return Findings.table()
          .row(
              "Foam grip",
              "g",
              128,
              "mm",
              1,
              "fine",
              2,
              0.5,
              physical,
              null,
              null,
              null,
              total,
              null)
          .row("Rationale", REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"blank", "zero", "negligible"})
    void isFoundWhereTheContributionIsLeftOut(String physical) {
      Object cell = physical.equals("blank") ? null : physical.equals("zero") ? 0 : physical;

      Finding finding = only(grip(cell, 0.5), FUZZY);

      assertThat(Findings.brief(finding)).isEqualTo("I2 physical-missing");
      assertThat(Findings.found(finding))
          .isEqualTo("the record \"Foam grip\" has no physical contribution");
    }

    @Test
    void isNotSaidWhereItIsThere() {
      assertThat(briefly(grip(2.5, 3), FUZZY)).isEmpty();
      assertThat(briefly(grip("=LAB_FUZZY(3,2)", "=LAB_TOTAL(H2:L2)"), FUZZY)).isEmpty();
    }

    @Test
    void isNotSaidOfOtherQuantitiesOrWhereNoContributionsAreShown() {
      assertThat(briefly(grip(null, 0.5), "quantities: [{name: foam grip, unit: mm}]")).isEmpty();
      assertThat(briefly(small().row("Foam grip", "g", 128, "mm", 3, REASON), FUZZY)).isEmpty();
    }
  }

  @Nested
  class FractionOfADivision {

    private static final String HALVES = "convention: {wide: 0.5, fine: 0.5}";
    private static final String HALF_ON_THE_RULE =
        "apparatus: [{name: steel rule, division: 1, unit: mm, spacing: 0.5}]";

    private static Grid spoke(String reading) {
      return Grid.sheet("Records")
          .row("Quantity", "Symbol", "Value", "Unit", "Reading", "Uncertainty", "Rationale")
          .row(
              "Spoke off the steel rule",
              "s",
              264,
              "mm",
              reading,
              "=E2",
              "Both ends are judged between the marks.");
    }

    private static Grid division(Object spacing, double reading) {
      return Grid.sheet("Records")
          .row(
              "Quantity",
              "Symbol",
              "Value",
              "Unit",
              "Division",
              "Spacing",
              "Ends",
              "Reading",
              "Uncertainty",
              "Rationale")
          .row(
              "Spoke off the steel rule",
              "s",
              264,
              "mm",
              1,
              spacing,
              2,
              reading,
              reading,
              "Both ends are judged between the marks.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=LAB_READING(1,0.1,2)", "=LAB_READING(1,0.25,2)"})
    void thatIsNotTheCoursesIsFound(String reading) {
      Finding finding = only(spoke(reading), HALVES);

      assertThat(finding.rule().id()).isEqualTo("fraction-otherwise");
      assertThat(Findings.expected(finding)).isEqualTo("0.5");
    }

    @Test
    void thatIsTheCoursesIsRight() {
      assertThat(briefly(spoke("=LAB_READING(1,0.5,2)"), HALVES)).isEmpty();
    }

    @Test
    void isFreeWhereNoCourseSaysOne() {
      assertThat(Findings.in(spoke("=LAB_READING(1,0.5,2)"))).isEmpty();
    }

    @Test
    void isFoundInAColumnOfItsOwn() {
      assertThat(briefly(division(0.1, 0.2), HALVES)).containsExactly("F2 fraction-otherwise");
    }

    @Test
    void belongsToTheInstrumentWhereTheCourseGivesItsOwn() {
      assertThat(briefly(spoke("=LAB_READING(1,0.5,2)"), HALF_ON_THE_RULE)).isEmpty();
      assertThat(briefly(spoke("=LAB_READING(1,0.25,2)"), HALF_ON_THE_RULE))
          .containsExactly("E2 fraction-otherwise");
      assertThat(briefly(spoke("=LAB_READING(1,\"fine\",2)"), HALF_ON_THE_RULE))
          .containsExactly("E2 fraction-otherwise");
    }

    @Test
    void ofTheInstrumentIsRightBesideAWordToo() {
      assertThat(briefly(division("fine", 1), HALF_ON_THE_RULE)).isEmpty();
    }

    @Test
    void ofTheInstrumentGivesTheReadingOfARecordWithoutDivision() {
      Grid noted =
          Grid.sheet("Records")
              .row("Quantity", "Symbol", "Value", "Unit", "Reading", "Uncertainty", "Rationale")
              .row("Spoke off the steel rule", "s", 264, "mm", 0.3, 0.3, "As well as I can see.");

      Finding finding = only(noted, HALF_ON_THE_RULE);

      assertThat(finding.rule().id()).isEqualTo("reading-differs");
      assertThat(Findings.expected(finding))
          .isEqualTo(
              "0.5 (division 1 x fraction 0.5 x ends 1) or 1 (division 1 x fraction 0.5 x ends 2)");
    }
  }

  /** The numbers: 3, 4 and 5 make a right triangle. */
  @Nested
  class CombineRequired {

    private static final String QUADRATURE =
        "convention: {combine: quadrature, combine-required: true}";
    private static final String STRAIGHT =
        "convention: {combine: straight, combine-required: true}";

    private static Grid total(double total) {
      return Grid.sheet("Records")
          .row(
              "Quantity",
              "Symbol",
              "Value",
              "Unit",
              "Physical",
              "Instrument",
              "Uncertainty",
              "Rationale")
          .row("Foam grip", "g", 128.0, "mm", 0.3, 0.4, total, REASON);
    }

    private static Grid carried(double uncertainty) {
      return small()
          .row("Left arm", "l", 30, "mm", 0.3, REASON)
          .row("Right arm", "r", 40, "mm", 0.4, REASON)
          .row("Both arms", "b", "=C2+C3", "mm", uncertainty, REASON);
    }

    @Test
    void findsATotalInTheOtherWay() {
      Finding finding = only(total(0.7), QUADRATURE);

      assertThat(Findings.brief(finding)).isEqualTo("G2 combined-otherwise");
      assertThat(Findings.found(finding))
          .isEqualTo("the uncertainty of \"Foam grip\", 0.7, is combined otherwise: straight");
      assertThat(briefly(total(0.5), STRAIGHT)).containsExactly("G2 combined-otherwise");
    }

    @Test
    void findsACarriedUncertaintyInTheOtherWay() {
      assertThat(briefly(carried(0.7), QUADRATURE)).containsExactly("E4 combined-otherwise");
      assertThat(briefly(carried(0.5), STRAIGHT)).containsExactly("E4 combined-otherwise");
    }

    @Test
    void saysNothingOfTheCoursesWay() {
      assertThat(briefly(total(0.5), QUADRATURE)).isEmpty();
      assertThat(briefly(total(0.7), STRAIGHT)).isEmpty();
      assertThat(briefly(carried(0.5), QUADRATURE)).isEmpty();
      assertThat(briefly(carried(0.7), STRAIGHT)).isEmpty();
    }

    @Test
    void leavesOtherCoursesTheirChoice() {
      assertThat(briefly(total(0.7), "convention: standard")).isEmpty();
    }
  }

  /** The factors for 95 %, 1.96 and as a rule 2: JCGM 100:2008, Table G.1 and 6.3.3. */
  @Nested
  class CoverageFactor {

    private static final String TWICE = "convention: {combine: quadrature, coverage: 2}";

    private static Grid expanded(String formula) {
      return small()
          .row("Left arm", "l", 30, "mm", 0.3, REASON)
          .row("Right arm", "r", 40, "mm", 0.4, REASON)
          .row("Both arms", "b", "=C2+C3", "mm", formula, REASON);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=2*SQRT(E2^2+E3^2)",
          "=SQRT(E2^2+E3^2)",
          "=LAB_COVER(\"infinite\")*SQRT(E2^2+E3^2)"
        })
    void ofTheCourseMayMultiplyACarriedUncertainty(String formula) {
      assertThat(briefly(expanded(formula), TWICE)).isEmpty();
    }

    @Test
    void thatIsNotTheCoursesIsAFault() {
      assertThat(briefly(expanded("=3*SQRT(E2^2+E3^2)"), TWICE))
          .containsExactly("E4 carried-differs");
      assertThat(briefly(expanded("=2*SQRT(E2^2+E3^2)"), "convention: standard"))
          .containsExactly("E4 carried-differs");
    }

    @Test
    void mayMultiplyATotal() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Symbol", "Value", "Unit", "Physical", "Uncertainty", "Rationale")
              .row("Foam grip", "g", 128.0, "mm", 0.3, "=2*E2", REASON);

      assertThat(briefly(grid, TWICE)).isEmpty();
      assertThat(briefly(grid, "convention: standard")).containsExactly("F2 total-differs");
    }
  }

  @Nested
  class Apparatus {

    private static final String BENCH =
        """
        apparatus:
          - {name: rule, division: 5, unit: mm}
          - {name: steel rule, also: [workshop ruler], division: 1, unit: mm, spacing: fine,
             half-width: 0.2}
          - {name: tyre gauge, kind: display, division: 0.01, unit: bar, percent: 1, counts: 2}
        """;

    private static Grid length(
        String unit,
        Object division,
        String spacing,
        Object reading,
        Object instrument,
        Object total,
        String reason) {
      return Findings.table()
          .row(
              "Crank arm",
              "L",
              172.5,
              unit,
              division,
              spacing,
              2,
              reading,
              null,
              instrument,
              null,
              null,
              total,
              null)
          .row("Rationale", reason);
    }

    private static Grid pressure(Object value, String unit, Object instrument) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Instrument", "Uncertainty", "Rationale")
          .row(
              "Tyre gauge, front wheel", value, unit, instrument, instrument, "As the maker says.");
    }

    @Test
    void givesTheInstrumentUncertaintyAsAHalfWidth() {
      Grid grid = length("mm", 1, "fine", 0.5, 0.1, 0.6, "Steel rule, both ends judged.");

      Finding finding = only(grid, BENCH);

      assertThat(Findings.brief(finding)).isEqualTo("J2 instrument-unlike-apparatus");
      assertThat(Findings.found(finding))
          .isEqualTo("the instrument uncertainty of \"Crank arm\" is 0.1");
      assertThat(Findings.expected(finding))
          .isEqualTo("0.2 mm, the maker's specification of the steel rule");
    }

    @Test
    void isRightAsTheMakerSpecifiesIt() {
      assertThat(
              briefly(
                  length("mm", 1, "fine", 0.5, 0.2, 0.7, "Workshop ruler, both ends judged."),
                  BENCH))
          .isEmpty();
    }

    @Test
    void isMissedWhereOtherContributionsAreShown() {
      Finding finding =
          only(length("mm", 1, "fine", 0.5, null, 0.5, "Steel rule, both ends judged."), BENCH);

      assertThat(Findings.found(finding))
          .isEqualTo("the instrument uncertainty of \"Crank arm\" is missing");
    }

    /** 1 % of 4.15 bar and two counts of 0.01 bar: 0.0415 + 0.02 = 0.0615, by hand. */
    @ParameterizedTest
    @CsvSource({"4.15, bar, 0.0615", "4.15, bar, 0.062", "415, kPa, 6.15", "415, kPa, 6.2"})
    void givesThatOfADisplayFromPercentAndCounts(double value, String unit, double instrument) {
      assertThat(briefly(pressure(value, unit, instrument), BENCH)).isEmpty();
    }

    @Test
    void missesCountsThatWereLeftOut() {
      Finding finding = only(pressure(415, "kPa", 4.15), BENCH);

      assertThat(Findings.brief(finding)).isEqualTo("D2 instrument-unlike-apparatus");
      assertThat(Findings.expected(finding))
          .isEqualTo("6.15 kPa, the maker's specification of the tyre gauge");
    }

    /** 0.0615 / sqrt(3) = 0.03551 (JCGM 100:2008, 4.3.7). */
    @Test
    void mayBeAStandardUncertaintyInQuadrature() {
      assertThat(briefly(pressure(4.15, "bar", 0.0355), "convention: standard\n" + BENCH))
          .isEmpty();
      assertThat(briefly(pressure(4.15, "bar", 0.0355), BENCH))
          .containsExactly("D2 instrument-unlike-apparatus");
    }

    @Test
    void hasADivision() {
      Finding finding =
          only(length("mm", 0.5, "fine", 0.25, 0.2, 0.45, "Steel rule, both ends judged."), BENCH);

      assertThat(Findings.brief(finding)).isEqualTo("E2 scale-unlike-apparatus");
      assertThat(Findings.found(finding)).isEqualTo("the division of \"Crank arm\" is 0.5");
      assertThat(Findings.expected(finding)).isEqualTo("1 mm, as the steel rule has");
    }

    @Test
    void hasTheDivisionInTheRecordsUnit() {
      assertThat(
              briefly(
                  length("cm", 0.1, "fine", 0.05, 0.02, 0.07, "Steel rule, both ends judged."),
                  BENCH))
          .isEmpty();
      assertThat(
              briefly(
                  length("cm", 1, "fine", 0.5, 0.02, 0.52, "Steel rule, both ends judged."), BENCH))
          .containsExactly("E2 scale-unlike-apparatus");
    }

    @Test
    void hasASpacing() {
      Finding finding =
          only(length("mm", 1, "wide", 0.2, 0.2, 0.4, "Steel rule, both ends judged."), BENCH);

      assertThat(Findings.brief(finding)).isEqualTo("F2 scale-unlike-apparatus");
      assertThat(Findings.found(finding)).isEqualTo("the spacing of \"Crank arm\" is wide");
      assertThat(Findings.expected(finding)).isEqualTo("fine, as the marks of the steel rule are");
    }

    @Test
    void isLeftAloneWhereNoneOrSeveralAreMentioned() {
      assertThat(briefly(length("mm", 0.5, "fine", 0.25, null, 0.25, REASON), BENCH)).isEmpty();
      assertThat(
              briefly(
                  length("mm", 0.5, "fine", 0.25, null, 0.25, "Steel rule beside the tyre gauge."),
                  BENCH))
          .isEmpty();
    }

    @Test
    void isTheOneThatTheQuantityNames() {
      String named = BENCH + "quantities: [{name: crank arm, unit: mm, apparatus: steel rule}]";

      assertThat(briefly(length("mm", 0.5, "fine", 0.25, 0.2, 0.45, REASON), named))
          .containsExactly("E2 scale-unlike-apparatus");
    }

    private static final String SHOWING_DIGITS =
        """
        apparatus:
          - {name: bench balance, kind: display, division: 0.1, unit: g}
          - {name: dial gauge, division: 0.5, unit: bar, spacing: wide}
          - {name: wheel timer, also: [timer], kind: stopwatch, division: 0.01, unit: s}
        quantities:
          - {name: crank mass, unit: g, apparatus: bench balance, required: false}
          - {name: swing time, unit: s, apparatus: wheel timer, required: false}
        """;

    private static Grid read(String quantity, double value, String unit, Object... contributions) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", "Timing", "Uncertainty", "Rationale")
          .row(quantity, value, unit, contributions[0], contributions[1], contributions[2], REASON);
    }

    @Test
    void allowsNoReadingOnADisplay() {
      Finding finding = only(read("Crank mass", 214.2, "g", 0.05, null, 0.05), SHOWING_DIGITS);

      assertThat(Findings.brief(finding)).isEqualTo("D2 display-reading");
      assertThat(Findings.expected(finding)).isEqualTo("no reading uncertainty");
    }

    @Test
    void allowsNoReadingOnAStopwatchThatTheRecordMentions() {
      assertThat(
              briefly(read("Ten turns, wheel timer", 8.31, "s", 0.01, 0.2, 0.21), SHOWING_DIGITS))
          .containsExactly("D2 display-reading");
    }

    @Test
    void allowsAReadingOnAScale() {
      assertThat(briefly(read("Dial gauge, front", 4.15, "bar", 0.05, null, 0.05), SHOWING_DIGITS))
          .isEmpty();
    }

    @Test
    void asksForTheReactionOnAStopwatch() {
      Finding finding = only(read("Swing time", 1.56, "s", null, null, 0.01), SHOWING_DIGITS);

      assertThat(Findings.brief(finding)).isEqualTo("E2 reaction-missing");
      assertThat(Findings.expected(finding)).isEqualTo("0.2 s (reaction time 0.2 s / 1 cycle)");
      assertThat(briefly(read("Swing time", 1.56, "s", null, 0.2, 0.2), SHOWING_DIGITS)).isEmpty();
    }

    @Test
    void asksForNoReactionOnAStopwatchThatALightGateStops() {
      assertThat(
              briefly(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Hand timing", "Uncertainty", "Rationale")
                      .row(
                          "Swing time", 1.56, "s", "no", 0.01, "A light gate starts and stops it."),
                  SHOWING_DIGITS))
          .isEmpty();
    }

    @Test
    void asksForNoReactionOfOtherTimes() {
      assertThat(briefly(read("Delivery time", 1.56, "s", null, null, 0.01), SHOWING_DIGITS))
          .isEmpty();
    }

    @Test
    void isNotAskedOfACalculatedValue() {
      assertThat(
              briefly(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Instrument", "Uncertainty", "Rationale")
                      .row("Tyre gauge, front", 4.15, "bar", 0.0615, 0.0615, "As the maker says.")
                      .row("Half of it", "=B2/2", "bar", 0.03, 0.03, "Half of the tyre gauge's."),
                  BENCH))
          .isEmpty();
    }
  }
}
