package tenthmark.measurement.functions;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.measurement.functions.Calls.text;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Grid;

/** What LAB_WHY says about a table of spokes and a tyre pressure. Numbers are invented. */
class LabWhyTest {

  private final Grid sheet =
      new Grid()
          .put("A1", "quantity")
          .put("B1", "value")
          .put("C1", "division")
          .put("A2", "spoke length / mm")
          .put("B2", 291.5)
          .put("C2", 1)
          .put("A3", "tyre pressure / bar")
          .put("B3", "4,2 bar")
          .put("C3", -0.1)
          .put("A4", "laps")
          .name("pressure", "$B$3");

  private String why(String cell) {
    CellAddress address = Grid.address(cell);
    return text("LAB_WHY", new Value.Reference(new CellBlock(CellRange.of(address), sheet)));
  }

  private String whyOfError(String formula, String error) {
    sheet.put("D9", formula).showsError("D9", error);
    return why("D9");
  }

  private String whyOf(String formula) {
    sheet.put("D9", formula).shows("D9", 1);
    return why("D9");
  }

  /** A formula that gives a value which hardly can be meant. */
  @Nested
  class ASlip {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=LAB_AGREE(172.4;172.5;0.5;0.2) | LAB_AGREE: v1 and v2 lie more than tenfold apart",
          "=LAB_GAP(172.4;172.5;0.5;0.2)   | LAB_GAP: v1 and v2 lie more than tenfold apart",
          "=LAB_DISPLAY(412.6;0.1;0.1;2)   | LAB_DISPLAY: resolution is 412.6, but reading only"
              + " 0.1",
          "=LAB_RESULT(2;82.5)             | LAB_RESULT: uncertainty is 82.5, but value only 2",
          "=LAB_ROUNDEDVALUE(0.5;-C3*291.5) | LAB_ROUNDEDVALUE: uncertainty is 29.15, but value"
              + " only",
          "=LAB_RESULT(B2;B4)              | LAB_RESULT: Here uncertainty is B4 (laps, value),"
              + " which",
          "=2*LAB_HANDTIMED(1;0.2)+LAB_DISPLAY(412.6;0.1;0.1;2) | LAB_DISPLAY: resolution is 412.6"
        })
    void isTold(String formula, String said) {
      assertThat(whyOf(formula)).startsWith(said);
    }

    @Test
    void isAnsweredInOneSentence() {
      assertThat(whyOf("=LAB_RESULT(2;82.5)"))
          .isEqualTo(
              "LAB_RESULT: uncertainty is 82.5, but value only 2: have the two changed places?");
      assertThat(whyOf("=LAB_RESULT(B2;B4)"))
          .isEqualTo(
              "LAB_RESULT: Here uncertainty is B4 (laps, value), which is blank and counts as 0.");
    }

    // Results near zero, coarse ones, equal ones, and what may be left out
    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_AGREE(172.4;0.5;172.5;0.2)",
          "=LAB_AGREE(0.3;0.5;0.1;0.5)",
          "=LAB_AGREE(0;0.5;12;1)",
          "=LAB_GAP(172.4;0.5;17.2;0.2)",
          "=LAB_AGREE(5;0.1;80;60)",
          "=LAB_DISPLAY(0.1;412.6;0.1;2)",
          "=LAB_DISPLAY(0.1;0;0.1;2)",
          "=LAB_DISPLAY(0.1;0.1;0.1;2)",
          "=LAB_DISPLAY(0.1;B4;B4;2)",
          "=LAB_RESULT(0;0.5)",
          "=LAB_RESULT(0.1;0.5)",
          "=LAB_RESULT(82.5;0)",
          "=LAB_RESULT(82.5;2;B4)",
          "=LAB_TOTAL(B2:B4)"
        })
    void isNotSeenInWhatMayBeMeant(String formula) {
      assertThat(whyOf(formula)).doesNotContain("changed places", "tenfold", "blank");
    }
  }

  /**
   * Whether a text is a number depends on the office: 4,2 is one only where numbers have commas.
   */
  @Nested
  class ANumberTypedAsText {

    private static final String SAID =
        " holds \"%s\", which looks like a number but is a text: no formula calculates with it. As"
            + " a number it is typed %s.";

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "24,6 | 24.6",
          "24.6 mm | 24.6",
          "-3 °C | -3",
          "6.5% | 6.5",
          "1.25·10^8 m/s | 1.25×10^8"
        })
    void isToldOfItsCell(String text, String number) {
      sheet.put("B9", text);
      assertThat(why("B9")).isEqualTo("B9" + SAID.formatted(text, number));
    }

    @ParameterizedTest
    @ValueSource(strings = {"laps", "24.6 ± 0.5 mm", "2 of the rear spokes", "A4", "12.5.2026"})
    void isNotSeenInOtherTexts(String text) {
      sheet.put("B9", text);
      assertThat(why("B9")).isEqualTo("no error: B9 holds the text \"" + text + "\", typed in.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=SUM(B2:B4)", "=AVERAGE(B2;B3)", "=IF(COUNT(B3)=0;0;LAB_READING(B3))"})
    void isToldOfAFormulaThatPassesItOver(String formula) {
      assertThat(whyOf(formula))
          .isEqualTo("B3 (tyre pressure / bar, value)" + SAID.formatted("4,2 bar", "4.2"));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_READBACK(B3;\"value\")",
          "=IF(B3=\"\";0;1)",
          "=\"p = \"&B3",
          "=SUM(B2;C2)"
        })
    void isNotToldWhereATextMayStand(String formula) {
      assertThat(whyOf(formula)).startsWith("no error: ");
    }
  }

  /** Where numbers have points, a comma stands between arguments. */
  @Nested
  class ADecimalComma {

    private static final String COMMA =
        " Is a decimal number meant? The comma stands between arguments here; write the number with"
            + " a point, as in 0.5.";

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_READING(0;5)",
          "=LAB_READING(0;5;\"fine\")",
          "=LAB_READING(0;5;\"fine\";2)",
          "=LAB_HANDTIMED(10;0;2)"
        })
    void isSuspectedInARefusedCall(String formula) {
      assertThat(whyOfError(formula, "Err:502")).endsWith("." + COMMA);
    }

    @Test
    void isSuspectedWhereANumberStandsForAText() {
      assertThat(whyOf("=LAB_RESULT(24;6;0;5)"))
          .isEqualTo("LAB_RESULT: Here unit is 0, a number where a text belongs." + COMMA);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_READING(0)",
          "=LAB_READING(-1;5)",
          "=LAB_READING(1;fine)",
          "=LAB_READING(C3;5)"
        })
    void isNotSuspectedWhereItExplainsNothing(String formula) {
      assertThat(whyOfError(formula, "Err:502")).doesNotContain("comma");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=LAB_DISPLAY(1;412;1)", "=LAB_RESULT(24;6;\"mm\")"})
    void isNotSuspectedInACallThatMayBeMeant(String formula) {
      assertThat(whyOf(formula)).startsWith("no error: ");
    }
  }

  /** Calc copies a million cells for it, or gives Err:504. */
  @Nested
  class AWholeColumn {

    @ParameterizedTest
    @ValueSource(strings = {"=LAB_TOTAL(F:F)", "=LAB_TOTAL(F1:G1048576)"})
    void isToldWithOrWithoutAnError(String formula) {
      sheet.put("F2", 0.5);
      assertThat(whyOf(formula)).contains(" is a whole column: the office copies");
      assertThat(whyOfError(formula, "Err:504")).contains(" is a whole column: the office copies");
    }

    @Test
    void isNotSeenInTheRowsThatAreUsed() {
      assertThat(whyOf("=LAB_TOTAL(B2:B2)")).startsWith("no error: ");
    }
  }

  @Nested
  class ABadArgument {

    @Test
    void isNamedWithTheCellThatItComesFrom() {
      assertThat(whyOfError("=LAB_READING(C3;\"fine\")", "Err:502"))
          .isEqualTo(
              "LAB_READING: division is -0.1; it must be a number greater than zero. Here division"
                  + " is C3 (tyre pressure / bar, division).");
    }

    @Test
    void isFoundUnderItsStoredName() {
      assertThat(whyOfError("=TENTHMARK.LAB.READING(0)", "#VALUE!"))
          .isEqualTo("LAB_READING: division is 0; it must be a number greater than zero.");
    }

    @Test
    void mayBeABlankCell() {
      assertThat(whyOfError("=LAB_READING(C4)", "Err:502"))
          .isEqualTo(
              "LAB_READING: division is 0; it must be a number greater than zero. Here division is"
                  + " C4 (laps, division), which is blank and counts as 0.");
    }

    @Test
    void isFoundWhereverTheFunctionStands() {
      String sentence = "LAB_READING: ends is 0; it must be a whole number from 1 to 100.";
      assertThat(whyOfError("=2*(1+SQRT(LAB_READING(1;;0)))", "Err:502")).isEqualTo(sentence);
      assertThat(whyOfError("=LAB_RESULT(B2;LAB_READING(1;;0))", "Err:502")).isEqualTo(sentence);
      assertThat(whyOfError("=IF(B2>5;LAB_READING(1;;0);1)", "Err:502")).isEqualTo(sentence);
      assertThat(whyOfError("=VLOOKUP(LAB_READING(1;;0);A1:C3;2)", "Err:502")).isEqualTo(sentence);
    }

    @Test
    void isJudgedByTheValueOfTheFunctionInside() {
      assertThat(whyOfError("=LAB_READING(LAB_READING(1)-1)", "Err:502"))
          .startsWith("LAB_READING: division is -0.9; it must be a number greater than zero.");
    }

    @Test
    void isSaidEvenWhereTheCellShowsTheSentenceItself() {
      sheet.put("D9", "=LAB_RESULT(B2;\"big\")").shows("D9", "LAB_RESULT: uncertainty is ...");
      assertThat(why("D9")).startsWith("LAB_RESULT: uncertainty is the text \"big\"");
      sheet.put("D9", "{=LAB_BUDGET(A1:B2)}").shows("D9", "LAB_BUDGET: table is ...");
      assertThat(why("D9")).startsWith("LAB_BUDGET: table is a range of 2 by 2 cells");
    }

    @Test
    void isMentionedWhereTheFormulaDealsWithIt() {
      assertThat(whyOf("=IFERROR(LAB_READING(0);1)"))
          .startsWith("no error: D9 is LAB_READING with division = 0, or 1 where that is an error.")
          .endsWith(
              "The formula itself deals with this: LAB_READING: division is 0; it must be a number"
                  + " greater than zero.");
    }

    @Test
    void inABranchThatIsNotTakenIsNone() {
      assertThat(whyOf("=IF(B2>1000;LAB_READING(0);1)")).startsWith("no error: ");
    }
  }

  @Nested
  class AnotherError {

    @Test
    void isADivisionByZero() {
      assertThat(whyOfError("=B2/(B2-291.5)", "#DIV/0!"))
          .isEqualTo("Division by zero: B2 (spoke length / mm, value) minus 291.5 is 0.");
      assertThat(whyOfError("=B2/B4", "#DIV/0!"))
          .isEqualTo("Division by zero: B4 (laps, value) is blank, which counts as 0.");
    }

    @Test
    void isATextWhereANumberBelongs() {
      assertThat(whyOfError("=2*B3", "#VALUE!"))
          .isEqualTo(
              "B3 (tyre pressure / bar, value) holds \"4,2 bar\", which looks like a number but is"
                  + " a text: no formula calculates with it. As a number it is typed 4.2.");
      assertThat(whyOfError("=SQRT(A4)", "#VALUE!"))
          .isEqualTo("A4 (quantity) holds the text \"laps\" where a number belongs.");
    }

    /** Calc shows Err:522, Err:502 or Err:504, as a function takes cells, formulas or ranges. */
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=B2+D10 | Err:522",
          "=LAB_CARRY(D10;B2;C2) | Err:502",
          "=LAB_CARRYTABLE(D10;B2;C2) | Err:522",
          "=LAB_SIMULATE(D10;B2;C2) | Err:502",
          "=LAB_TOTAL(D9:D10) | Err:504",
          "=LAB_SLOPE(B2:D9;D10) | Err:504"
        })
    void ofACircleIsSaidTheSameWayOfEveryFunction(String formula, String error) {
      sheet.put("D10", "=D9*2").showsError("D10", error);
      assertThat(whyOfError(formula, error))
          .startsWith("cells refer to each other in a circle: D9, ");
    }

    @Test
    void behindANameIsFound() {
      sheet.name("ratio", "$B$2/$B$4").name("broken", "2*($B$2");
      assertThat(whyOfError("=2*ratio", "#DIV/0!"))
          .isEqualTo("Division by zero: B4 (laps, value) is blank, which counts as 0.");
      assertThat(whyOfError("=2*broken", "#NAME?")).contains("name broken: the formula ends too");
    }

    @Test
    void isAnUnknownName() {
      assertThat(whyOfError("=LAB_READING(1;fine)", "#NAME?"))
          .isEqualTo(
              "fine is not a name that this workbook defines. If it is meant as a text, it needs"
                  + " quotation marks.");
      assertThat(whyOfError("=LAB_READNG(1)", "#NAME?"))
          .isEqualTo(
              "This office does not know the function LAB_READNG. Did you mean LAB_READING?");
    }

    @Test
    void isAFunctionThatIsNotDefinedThere() {
      assertThat(whyOfError("=SQRT(1-B2)", "#NUM!"))
          .isEqualTo(
              "the square root of (1 minus B2 (spoke length / mm, value)) has no value:"
                  + " SQRT(-290.5) is not defined.");
    }

    @Test
    void isFollowedIntoTheCellThatItComesFrom() {
      sheet.put("B5", "=B2/B4").showsError("B5", "#DIV/0!");
      sheet.put("B6", "=SUM(B2:B5)").showsError("B6", "#DIV/0!");
      String reason =
          "Cell B5 (value) holds the error #DIV/0!. The reason there: Division by zero: B4 (laps,"
              + " value) is blank, which counts as 0.";
      assertThat(whyOfError("=LAB_TOTAL(B5:B5)", "#DIV/0!")).isEqualTo(reason);
      assertThat(whyOfError("=B6+1", "#DIV/0!"))
          .isEqualTo("Cell B6 (value) holds the error #DIV/0!. The reason there: " + reason);
    }

    @Test
    void mayStandInACellWithoutFormula() {
      sheet.fault("B5", "#N/A");
      assertThat(why("B5")).isEqualTo("B5 holds the error #N/A without a formula.");
      assertThat(whyOfError("=B5*2", "#N/A")).isEqualTo("Cell B5 (value) holds the error #N/A.");
    }

    @Test
    void isACircle() {
      sheet.put("B5", "=D9").showsError("B5", "Err:522");
      assertThat(whyOfError("=B5+1", "Err:522"))
          .isEqualTo("cells refer to each other in a circle: D9, B5, D9.");
    }

    @Test
    void isAFormulaThatCannotBeRead() {
      assertThat(whyOfError("=2*(B2", "Err:508"))
          .isEqualTo("The formula cannot be explained: the formula ends too early.");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=VLOOKUP(\"rim\";A1:B3;2) | #N/A | Tenthmark cannot compute VLOOKUP itself, so look"
              + " there first.",
          "=B2*2 | Err:999 | an error of the spreadsheet program. Tenthmark finds no reason for it"
              + " in the formula."
        })
    void maybeOnlyTheOfficeCanTell(String formula, String error, String end) {
      assertThat(whyOfError(formula, error)).startsWith("D9 shows " + error + ": ").endsWith(end);
    }
  }

  @Nested
  class NoError {

    @Test
    void saysWhatTheFormulaDoes() {
      assertThat(whyOf("=4*PI()^2*B2/C2^2-SQRT(B2+C2)"))
          .isEqualTo(
              "no error: D9 is 4 times π squared times B2 (spoke length / mm, value) divided by C2"
                  + " (spoke length / mm, division) squared minus the square root of (B2 (spoke"
                  + " length / mm, value) plus C2 (spoke length / mm, division)).");
    }

    @Test
    void saysWhatALabFunctionGives() {
      assertThat(whyOf("=LAB_READING(C2;\"fine\";2)"))
          .isEqualTo(
              "no error: D9 is LAB_READING with division = C2 (spoke length / mm, division),"
                  + " spacing = \"fine\" and ends = 2. LAB_READING: Gives the uncertainty of"
                  + " reading a scale by eye.");
    }

    @Test
    void saysWhatIsTypedIn() {
      assertThat(why("B2")).isEqualTo("no error: B2 holds the number 291.5, typed in.");
      assertThat(why("A4")).isEqualTo("no error: A4 holds the text \"laps\", typed in.");
      assertThat(why("D9")).isEqualTo("no error: D9 is empty.");
    }

    @Test
    void doesNotExplainInRounds() {
      sheet.put("D10", "=LAB_WHY(D9)").shows("D10", "no error");
      assertThat(whyOf("=LAB_WHY(D10)")).startsWith("no error: D9 is LAB_WHY with cell = D10");
    }
  }

  @Test
  void wantsOneCell() {
    assertThat(
            text(
                "LAB_WHY",
                new Value.Reference(new CellBlock(new CellRange(Grid.SHEET, 0, 0, 1, 2), sheet))))
        .isEqualTo("LAB_WHY: cell is a range of 3 by 2 cells; it must be one cell.");
  }
}
