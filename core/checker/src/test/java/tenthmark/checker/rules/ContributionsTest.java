package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.rules.Findings.REASON;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

class ContributionsTest {

  @Nested
  class TotalDiffers {

    private static Grid total(Object reading, Object physical, Object total) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", "Physical", "Uncertainty", "Rationale")
          .row("Grip", 128, "mm", reading, physical, total, REASON);
    }

    @Test
    void isFoundWithBothTotalsThatWouldDo() {
      Finding finding = Findings.only(total(0.3, 0.4, 0.6));

      assertThat(finding.cell().place()).isEqualTo("F2");
      assertThat(finding.rule().id()).isEqualTo("total-differs");
      assertThat(Findings.found(finding)).isEqualTo("the total of \"Grip\" is 0.6");
      assertThat(Findings.expected(finding))
          .isEqualTo("0.7 (straight: reading 0.3 + physical 0.4) or 0.5 (quadrature of the same)");
    }

    @Test
    void isFoundWhereAFormulaLeavesOneOut() {
      assertThat(Findings.in(total(0.5, 0.04, "=LAB_TOTAL(D2)")))
          .containsExactly("F2 total-differs");
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0.4, 0.7", "0.3, 0.4, 0.5", "0.5, 0.1, 0.51", "0.52, 0.03, 0.6"})
    void isNotSaidOfEitherWayToCombineAndOfARoundedTotal(double one, double other, double total) {
      assertThat(Findings.in(total(one, other, total))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"negligible", "-", "none", "0"})
    void isNotSaidWhereAContributionIsNothing(String word) {
      assertThat(Findings.in(total(0.3, word, 0.3))).isEmpty();
    }

    @Test
    void isNotSaidWhereAContributionIsNoNumber() {
      assertThat(Findings.in(total(0.3, "see below", 0.9))).isEmpty();
    }

    private static Grid withColumn(String total) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", "Play of the rollers", "Uncertainty", "Why")
          .row("Chain", 305.4, "mm", 0.5, 0.4, total, REASON);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=D2+E2", "=SUM(D2:E2)", "=LAB_TOTAL(D2:E2)", "=SQRT(D2^2+E2^2)"})
    void countsAColumnOfAnyHeadingThatTheFormulaCounts(String total) {
      assertThat(Findings.in(withColumn(total))).isEmpty();
    }

    @Test
    void namesThatColumnByItsCell() {
      assertThat(Findings.expected(Findings.only(withColumn("=D2+E2/2"))))
          .isEqualTo("0.9 (straight: reading 0.5 + E2 0.4) or 0.640312 (quadrature of the same)");
    }

    @Test
    void saysOnceWhatOneContributionMakes() {
      assertThat(Findings.expected(Findings.only(total(0.5, null, 0.2))))
          .isEqualTo("0.5 (reading 0.5 alone)");
    }

    @Test
    void isNotSaidWhereTheFormulaRounds() {
      assertThat(Findings.in(total(0.32, 0.43, "=ROUND(D2+E2,1)"))).isEmpty();
    }
  }

  @Nested
  class ReadingDiffers {

    private static Grid scale(Object division, Object spacing, Object ends, Object reading) {
      return Grid.sheet("Records")
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
          .row("Pressure", 6.2, "bar", division, spacing, ends, reading, "=G2", REASON);
    }

    // common practice, no source: a tenth between wide marks, a quarter between fine ones
    @ParameterizedTest
    @CsvSource({
      "0.5, wide, 1, 0.1, '0.05 (division 0.5 x fraction 0.1 x ends 1)'",
      "0.5, fine, 1, 0.05, '0.125 (division 0.5 x fraction 0.25 x ends 1)'",
      "1, fine, 2, 0.25, '0.5 (division 1 x fraction 0.25 x ends 2)'",
      "1, 0.5, 2, 0.5, '1 (division 1 x fraction 0.5 x ends 2)'"
    })
    void isFoundWithTheSizeThatFollows(
        double division, String spacing, double ends, double reading, String expected) {
      Object marks = spacing.equals("0.5") ? (Object) 0.5 : spacing;
      Finding finding = Findings.only(scale(division, marks, ends, reading));

      assertThat(finding.rule().id()).isEqualTo("reading-differs");
      assertThat(finding.cell().place()).isEqualTo("G2");
      assertThat(Findings.expected(finding)).isEqualTo(expected);
    }

    @Test
    void isFoundWhereTheReadingIsLeftOut() {
      assertThat(Findings.in(scale(0.5, "wide", 1, null))).contains("G2 reading-differs");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=LAB_DISPLAY(D2)", "digital display"})
    void isNotMissingOnADisplayWhoseLastDigitStandsUnderDivision(String instrument) {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Division", "Reading", "Instrument", "Uncertainty")
              .row("Spoke, tone", 381, "Hz", 1, null, instrument, 1)
              .row(REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void isNotMissingOnADisplayOfTheCourse() {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Division", "Reading", "Instrument", "Uncertainty")
              .row("Spoke, tone", 381, "Hz", 1, null, 1, 1)
              .row("The tuner shows whole hertz and no more.");
      String profile =
          """
          apparatus:
            - {name: tuner, kind: %s, division: 1, unit: Hz}
          """;

      assertThat(Findings.in(grid, profile.formatted("display"))).isEmpty();
      assertThat(Findings.in(grid, profile.formatted("scale")))
          .extracting(Findings::brief)
          .containsExactly("E2 reading-differs");
    }

    /** By hand: 1 mm x 1/4 is 0.25 mm at one end and 0.5 mm at two, in cm a tenth of that. */
    @ParameterizedTest
    @CsvSource({"0.5, mm, true", "0.25, mm, true", "0.05, cm, true", "0.5, cm, false"})
    void followsFromTheCoursesScaleWhereTheRecordNamesNone(
        double reading, String unit, boolean right) {
      Grid grid =
          Grid.sheet("Records")
              .row("Quantity", "Value", "Unit", "Reading", "Uncertainty", "Rationale")
              .row("Chain", 30.56, unit, reading, reading, REASON);
      String profile =
          """
          apparatus:
            - {name: steel rule, kind: scale, division: 1, unit: mm, spacing: fine}
          quantities: [{name: Chain, unit: mm, apparatus: steel rule}]
          """;

      assertThat(Findings.in(grid, profile).stream().map(Findings::brief))
          .filteredOn("D2 reading-differs"::equals)
          .hasSize(right ? 0 : 1);
    }

    @Test
    void isFoundWhereTheFunctionWasGivenAnotherDivision() {
      assertThat(Findings.in(scale(0.5, "wide", 1, "=LAB_READING(1,\"wide\",1)")))
          .containsExactly("G2 reading-differs");
    }

    @ParameterizedTest
    @CsvSource({
      "0.5, wide, 1, 0.05",
      "0.5, WIDE, 1, 0.05",
      "0.5, , 1, 0.05",
      "0.5, , , 0.125",
      "0.5, fine, 1, 0.13",
      "0.5, fine, 1, 0.1"
    })
    void isNotSaidOfWhatFitsOrIsRounded(
        double division, String spacing, Double ends, double reading) {
      assertThat(Findings.in(scale(division, spacing, ends, reading))).isEmpty();
    }

    /** 0.5 / sqrt(3) = 0.2887, 0.5 / sqrt(6) = 0.2041 (JCGM 100:2008, 4.3.7 and 4.3.9). */
    @ParameterizedTest
    @ValueSource(
        strings = {
          "0.2887",
          "=LAB_SHAPED(LAB_READING(1,\"fine\",2))",
          "=LAB_SHAPED(0.5,\"triangular\")"
        })
    void mayBeAStandardUncertaintyInQuadratureOnly(String standard) {
      Object reading = standard.startsWith("=") ? standard : (Object) Double.valueOf(standard);
      Grid grid = scale(1, "fine", 2, reading);

      assertThat(Findings.in(grid, "convention: standard")).isEmpty();
      assertThat(Findings.in(grid, "convention: bench"))
          .extracting(Findings::brief)
          .containsExactly("G2 reading-differs");
    }

    @Test
    void isNotSaidWithoutADivision() {
      assertThat(Findings.in(scale(null, "wide", 1, 0.3))).isEmpty();
    }
  }

  @Nested
  class LengthOneEnd {

    private static Grid length(String quantity, String unit, Object reading) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", "Uncertainty", "Rationale")
          .row(quantity, 172.5, unit, reading, "=D2", REASON);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"=LAB_READING(1,\"fine\")", "=LAB_READING(1,\"fine\",1)", "=LAB_READING(1)"})
    void isFoundInTheArguments(String reading) {
      assertThat(Findings.in(length("Crank arm", "mm", reading)))
          .containsExactly("D2 length-one-end");
    }

    @Test
    void isFoundInTheColumnsToo() {
      Finding finding =
          Findings.only(
              Grid.sheet("Records")
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
                  .row("Spoke", 291.3, "mm", 1, "fine", 1, 0.25, 0.25, REASON));

      assertThat(finding.rule().id()).isEqualTo("length-one-end");
      assertThat(Findings.expected(finding)).isEqualTo("0.5 for two ends (2 x 0.25)");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_READING(1,\"fine\",2)",
          "=2*LAB_READING(1,\"fine\")",
          "=LAB_READING(1,\"fine\")*2"
        })
    void isNotSaidOfTwoEnds(String reading) {
      assertThat(Findings.in(length("Crank arm", "mm", reading))).isEmpty();
    }

    /** 0.25 / sqrt(6) = 0.10206 and 0.25 / sqrt(3) = 0.14434 (JCGM 100:2008, 4.3.9 and 4.3.7). */
    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_SHAPED(LAB_READING(1,\"fine\"))",
          "=LAB_SHAPED(LAB_READING(1,\"fine\",1),\"triangular\")",
          "=LAB_READING(1,\"fine\")/SQRT(3)",
          "=LAB_READING(1,\"fine\")"
        })
    void isFoundInAStandardUncertaintyToo(String reading) {
      assertThat(Findings.in(length("Crank arm", "mm", reading), "convention: standard"))
          .extracting(Findings::brief)
          .containsExactly("D2 length-one-end");
    }

    @Test
    void saysWhatTheStandardUncertaintyOfTwoEndsIs() {
      Finding finding =
          Findings.in(
                  length("Crank arm", "mm", "=LAB_SHAPED(LAB_READING(1,\"fine\"))"),
                  "convention: standard")
              .get(0);

      assertThat(Findings.found(finding))
          .isEqualTo("the length \"Crank arm\" has 0.144338 for one end");
      assertThat(Findings.expected(finding))
          .isEqualTo(
              "0.204124 or 0.288675, the standard uncertainty of two ends (0.5 = 2 x 0.25 as a"
                  + " half-width)");
    }

    /** Two ends, judged alone each, make 0.25 / sqrt(3) x sqrt(2) = 0.5 / sqrt(6). */
    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_SHAPED(LAB_READING(1,\"fine\",2))",
          "=LAB_SHAPED(LAB_READING(1,\"fine\",2),\"triangular\")",
          "=LAB_SHAPED(LAB_READING(1,\"fine\"))*SQRT(2)",
          "=2*LAB_SHAPED(LAB_READING(1,\"fine\"))",
          "=ROUND(LAB_SHAPED(LAB_READING(1,\"fine\",2)),1)",
          "=LAB_READING(1,\"fine\",2)"
        })
    void isNotSaidOfAStandardUncertaintyOfTwoEnds(String reading) {
      assertThat(Findings.in(length("Crank arm", "mm", reading), "convention: standard")).isEmpty();
    }

    @Test
    void isNotSaidOfTheStandardUncertaintyOfOnePosition() {
      assertThat(
              Findings.in(
                  length("Water level", "mm", "=LAB_SHAPED(LAB_READING(1,\"fine\"))"),
                  "convention: standard"))
          .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
      "Position of the brake lever, mm",
      "Water level, mm",
      "Tyre pressure, bar",
      "Arm by vernier caliper, mm",
      "Wasserpegel, mm",
      "AUSLENKUNG des Bremshebels, mm",
      "Kurbel mit Messschieber, mm",
      "Déplacement du levier, mm",
      "Manivelle au pied à coulisse, mm",
      "Posición de la palanca, mm",
      "NIVEL del agua, mm"
    })
    void isNotSaidOfOnePositionOrAnotherQuantity(String quantity, String unit) {
      assertThat(Findings.in(length(quantity, unit, "=LAB_READING(1,\"fine\")"))).isEmpty();
    }
  }

  @Nested
  class DisplayReading {

    private static Grid balance(String quantity, Object reading, Object instrument) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Reading", "Instrument", "Uncertainty", "Rationale")
          .row(quantity, 6.41, "g", reading, instrument, "=D2+E2", REASON);
    }

    @Test
    void isFoundBesideLabDisplay() {
      Finding finding = Findings.only(balance("Spoke", 0.05, "=LAB_DISPLAY(0.01)"));

      assertThat(finding.rule().id()).isEqualTo("display-reading");
      assertThat(finding.cell().place()).isEqualTo("D2");
      assertThat(Findings.found(finding))
          .isEqualTo("a reading uncertainty of 0.05 for \"Spoke\", read off a digital display");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "Spoke on a digital balance",
          "Speiche auf digitaler Waage",
          "Rayon sur une balance numérique",
          "Radio en una balanza digital"
        })
    void isFoundWhereTheWordSaysSo(String quantity) {
      assertThat(Findings.in(balance(quantity, 0.05, 0.01))).containsExactly("D2 display-reading");
    }

    @Test
    void isFoundWhereAResolutionStands() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row(
                          "Quantity",
                          "Value",
                          "Unit",
                          "Resolution",
                          "Reading",
                          "Uncertainty",
                          "Rationale")
                      .row("Spoke", 6.41, "g", 0.01, 0.05, 0.05, REASON)))
          .containsExactly("E2 display-reading");
    }

    @Test
    void isFoundWhereLabDisplayStandsInAColumnOfItsOwn() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row(
                          "Quantity",
                          "Value",
                          "Unit",
                          "Reading",
                          "my own",
                          "Uncertainty",
                          "Rationale")
                      .row("Spoke", 6.41, "g", 0.05, "=LAB_DISPLAY(0.01)", 0.05, REASON)))
          .containsExactly("D2 display-reading");
    }

    @Test
    void isNotSaidOfNoReadingOrAScale() {
      assertThat(Findings.in(balance("Spoke", 0, "=LAB_DISPLAY(0.01)"))).isEmpty();
      assertThat(Findings.in(balance("Spoke on a beam balance", 0.05, 0.01))).isEmpty();
    }

    @Test
    void isNotSaidOfAScaleInATableThatIsPreparedForDisplaysToo() {
      assertThat(
              Findings.in(
                  balance("Spoke on a beam balance", 0.05, "=IF(H2=\"\",0.01,LAB_DISPLAY(H2))")))
          .isEmpty();
    }
  }

  @Nested
  class ReactionMissing {

    private static Grid timed(String quantity, String unit, Object cycles, Object timing) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Cycles", "Timing", "Uncertainty", "Rationale")
          .row(quantity, 12.4, unit, cycles, timing, 0.2, "Stopped as the valve passed the fork.");
    }

    @Test
    void isFoundWhereAStopwatchHasNoTiming() {
      Finding finding = Findings.only(timed("Wheel turns, stopwatch", "s", null, null));

      assertThat(finding.rule().id()).isEqualTo("reaction-missing");
      assertThat(finding.cell().place()).isEqualTo("E2");
      assertThat(Findings.expected(finding)).isEqualTo("0.2 s (reaction time 0.2 s / 1 cycle)");
    }

    @Test
    void isFoundWhereTheTimingIsSmallerThanTheReaction() {
      assertThat(Findings.in(timed("Wheel, timed by hand", "s", 10, 0.001)))
          .contains("E2 reaction-missing");
    }

    @ParameterizedTest
    @CsvSource({
      "'Wheel turns, stopwatch', s, 1, 0.2",
      "'Wheel turns, stopwatch', ms, 1, 200",
      "'Wheel turns, light gate', s, , ",
      "'Cable fitted by hand', mm, , "
    })
    void isNotSaidWhereItIsThereOrNoHandTimed(
        String quantity, String unit, Double cycles, Double timing) {
      assertThat(Findings.in(timed(quantity, unit, cycles, timing)))
          .doesNotContain("E2 reaction-missing");
    }

    private static Grid noted(String quantity, String unit, Object timing, String reason) {
      return Grid.sheet("Records")
          .row("Quantity", "Symbol", "Value", "Unit", "Timing", "Uncertainty", "Rationale")
          .row(quantity, "t", 12.4, unit, timing, "=E2", reason);
    }

    @ParameterizedTest
    @CsvSource({
      "'Valve passes the fork, stopwatch', s, 0.001",
      "'Valve passes the fork, stopwatch', s, '=LAB_HANDTIMED(1,0.001)'",
      "'Valve passes the fork, stopwatch', ms, '=LAB_HANDTIMED(1,1)'",
      "'Ten times past, stopwatch', s, '=LAB_HANDTIMED(10,0.01)'",
    })
    void isFoundOfATimingThatNobodyReactsIn(String quantity, String unit, String timing) {
      Object cell = timing.startsWith("=") ? timing : Double.valueOf(timing);

      assertThat(Findings.in(noted(quantity, unit, cell, REASON))).contains("E2 reaction-missing");
    }

    @ParameterizedTest
    @CsvSource({
      "'Valve passes the fork, stopwatch', s, '=LAB_HANDTIMED(1,0.18)', 'I reacted so fast.'",
      "'Valve passes the fork, stopwatch', ms, '=LAB_HANDTIMED(1,180)', 'I reacted so fast.'",
      "'Valve passes the fork, stopwatch', s, =0.2/20, 'One of those that were timed.'",
      "'Valve passes the fork, stopwatch', s, 0.01, 'The time of 20 in one go, divided.'",
      "'Wheel, stopwatch', s, 0.01, 'Several turns in one go, divided by their number.'",
      "'Rad, Stoppuhr', s, 0.01, 'Mehrere Umdrehungen in einem Zug.'",
    })
    void isNotSaidOfASmallOneThatMayBeRight(
        String quantity, String unit, String timing, String reason) {
      Object cell = timing.startsWith("=") ? timing : Double.valueOf(timing);

      assertThat(Findings.in(noted(quantity, unit, cell, reason)))
          .doesNotContain("E2 reaction-missing");
    }

    private static Grid totalled(Object total) {
      return Grid.sheet("Records")
          .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Wheel turns, stopwatch", "t", 12.4, "s", total, REASON);
    }

    @Test
    void isNotSaidOfATotalWithoutContributionsThatMayHoldIt() {
      assertThat(Findings.in(totalled(0.21))).doesNotContain("C2 reaction-missing");
    }

    @Test
    void isFoundWhereATotalWithoutContributionsIsTooSmallToHoldIt() {
      assertThat(Findings.in(totalled(0.01))).contains("C2 reaction-missing");
    }

    @Test
    void isNotSaidOfATimeCopiedFromAnotherRecord() {
      Grid grid =
          timed("Wheel turns, stopwatch", "s", 1, 0.2)
              .andSheet("Wheel")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Turns, stopwatch", "=Records!B2", "s", "=Records!F2", REASON);

      assertThat(Findings.in(grid)).isEmpty();
    }

    @Test
    void isNotSaidBesideLabHandtimed() {
      assertThat(Findings.in(timed("Wheel, stopwatch", "s", null, "=LAB_HANDTIMED(1)"))).isEmpty();
    }
  }

  @Nested
  class UnitsMixed {

    @Test
    void isFoundInTheHeadings() {
      Finding finding =
          Findings.only(
              Grid.sheet("Records")
                  .row(
                      "Quantity",
                      "Value (cm)",
                      "Reading (mm)",
                      "Physical (cm)",
                      "Total",
                      "Rationale")
                  .row("Arm", 17.25, 0.5, 0.1, 0.6, REASON));

      assertThat(finding.rule().id()).isEqualTo("units-mixed");
      assertThat(finding.cell().place()).isEqualTo("C2");
      assertThat(Findings.found(finding)).isEqualTo("the record \"Arm\" mixes the units cm and mm");
      assertThat(Findings.expected(finding)).isEqualTo("every contribution in cm");
    }

    @Test
    void isFoundBesideTheNumbers() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Reading", "Physical", "Total", "Rationale")
                      .row("Arm", 17.25, "cm", "0.5 mm", 0.1, 0.6, REASON)))
          .containsExactly("D2 units-mixed");
    }

    @ParameterizedTest
    @CsvSource({"µm, um", "mm, millimetres", "°C, degC", "N·m, Nm"})
    void isNotSaidOfSpellingsOfOneUnit(String one, String other) {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row("Quantity", "Value", "Unit", "Reading", "Total", "Rationale")
                      .row("Play", 172.5, one, "2 " + other, 2, REASON)))
          .isEmpty();
    }

    @Test
    void isNotSaidOfOneUnitOrOfBareNumbers() {
      assertThat(
              Findings.in(
                  Grid.sheet("Records")
                      .row(
                          "Quantity",
                          "Value (mm)",
                          "Reading (mm)",
                          "Physical",
                          "Total",
                          "Rationale")
                      .row("Arm", 172.5, 0.5, "0.1 mm", 0.6, REASON)))
          .isEmpty();
    }
  }

  @Nested
  class UncertaintyExceedsValue {

    private static Grid offset(double value, double uncertainty) {
      return Grid.sheet("Records")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Zero offset", value, "mm", uncertainty, REASON);
    }

    @Test
    void isOnlyANote() {
      Finding finding = Findings.only(offset(0.2, 0.5));

      assertThat(finding.rule().id()).isEqualTo("uncertainty-exceeds-value");
      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void isNotSaidOfZeroOrOfEqualSizes() {
      assertThat(Findings.in(offset(0, 0.5))).isEmpty();
      assertThat(Findings.in(offset(-0.5, 0.5))).isEmpty();
    }
  }
}
