package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Grid.Stored;
import tenthmark.checker.workbook.WorkbookFile;

class CellsAndFilesTest {

  @Nested
  class ErrorCell {

    @Test
    void saysWhatTheFunctionRefuses() {
      Finding finding =
          Findings.onlyInCells(Grid.sheet("Data").row(0, "=LAB_READING(A1)", "=B1*2"));

      assertThat(finding.rule().id()).isEqualTo("error-cell");
      assertThat(finding.cell().place()).isEqualTo("B1");
      assertThat(Findings.found(finding))
          .isEqualTo(
              "LAB_READING: division is 0; it must be a number greater than zero."
                  + " (=LAB_READING(A1))");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_READING(-1)", "=LAB_READING(\"1 mm\")", "=LAB_READING(1,\"narrow\")",
          "=LAB_TOTAL(Z1:Z9)", "=LAB_RESULT(1,-1,\"mm\")", "=LAB_RESULT(1,\"x\",\"mm\")",
          "=LAB_TOTAL(1E308*10)"
        })
    void isFoundForEveryBadArgument(String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row(formula)))
          .containsExactly("A1 error-cell");
    }

    @Test
    void namesTheCellOfARange() {
      Finding finding =
          Findings.onlyInCells(
              Grid.sheet("Data").row(0.5, "=LAB_TOTAL(A1:A3)").row("soft").row(0.1));

      assertThat(Findings.found(finding)).contains("row 2").contains("the text \"soft\"");
    }

    @ParameterizedTest
    @CsvSource({"=1/0, #DIV/0!", "=A9:A10+\"x\", #VALUE!", "=SQRT(-1), #NUM!", "=#REF!+1, #REF!"})
    void namesTheErrorOfTheSpreadsheet(String formula, String name) {
      assertThat(Findings.found(Findings.onlyInCells(Grid.sheet("Data").row(formula))))
          .startsWith(name);
    }

    @ParameterizedTest
    @CsvSource({
      "=A1/B1, 'numbers to calculate with; in B1 stands \"quite fast\"'",
      "=AVERAGE(C1:C9), 'numbers in C1:C9, where nothing stands'",
      "=A1/C1, 'numbers in C1, where nothing stands'",
      "=A1/0, a number that does not divide by zero or by an empty cell"
    })
    void namesTheCellsThatHoldNoNumber(String formula, String expected) {
      Finding finding =
          Findings.onlyInCells(Grid.sheet("Data").row(12, "quite fast", null, formula));

      assertThat(Findings.expected(finding)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
      "'=LAB_READING(1,fine)', 'a name that the workbook defines instead of fine, or \"fine\" in"
          + " quotation marks if a text is meant'",
      "=LAB_HANDTIMD(2), LAB_HANDTIMED instead of LAB_HANDTIMD",
      "=Reading(1)*2, LAB_READING instead of READING"
    })
    void namesTheWordThatNobodyKnows(String formula, String expected) {
      Finding finding = Findings.onlyInCells(Grid.sheet("Data").row(new Stored(formula, "#NAME?")));

      assertThat(finding.rule().id()).isEqualTo("error-cell");
      assertThat(Findings.expected(finding)).isEqualTo(expected);
    }

    /** Another program may know it. */
    @Test
    void isNotSaidOfAnUnknownFunctionThatResemblesNoneOfOurs() {
      assertThat(
              Findings.inCells(Grid.sheet("Data").row(new Stored("=NOSUCHFUNCTION(2)", "#NAME?"))))
          .containsExactly("A1 not-checkable");
    }

    @Test
    void partsArgumentsAsTheGuidesDo() {
      Finding finding =
          Findings.onlyInCells(Grid.sheet("Data").row("=LAB_RESULT(1,-1,\"a,b\",,\"brief\")"));

      assertThat(Findings.found(finding)).endsWith("(=LAB_RESULT(1;-1;\"a,b\";;\"brief\"))");
    }

    @Test
    void isNotSaidOfAPointLeftOutOfAChart() {
      assertThat(Findings.inCells(Grid.sheet("Data").row("=NA()"))).isEmpty();
    }
  }

  @Nested
  class NumberAsText {

    @ParameterizedTest
    @ValueSource(
        strings = {"=A1*2", "=A1+B1", "=SQRT(A1)", "=AVERAGE(A1:B1)", "=A1/B1", "=STDEV(A1:B1)"})
    void isNotedInsteadOfTheErrorThatItBringsAbout(String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row("172,5", " 0,25 ", formula, "=C1+1")))
          .containsExactly("A1 number-as-text");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=SUM(A1:C1)",
          "=AVERAGE(A1:C1)",
          "=SQRT(SUMSQ(A1:C1))",
          "=ROUND(MAX(A1:C1),1)",
          "=STDEV(A1:C1)",
          "=SUM(B1:C1)*2"
        })
    void isNotedWhereAFormulaLeavesItOutWithoutAWord(String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row(172.5, "171,5", 172, 173, formula)))
          .containsExactly("B1 number-as-text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=COUNTA(A1:C1)", "=COUNT(A1:C1)", "=SUM(C1:D1)", "=SUM(A1:A1)"})
    void isNotNotedWhereNothingIsLeftOut(String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row(172.5, "171,5", 172, 173, formula)))
          .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"soft", "2 ends", "1.2.3", "gauge 2,5"})
    void isNoWordBesideTheNumbers(String word) {
      assertThat(Findings.inCells(Grid.sheet("Data").row(172.5, word, 172, "=SUM(A1:C1)")))
          .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=SUM(A1:B1)", "=AVERAGE(A1,B1)", "=MAX(A1:B1)"})
    void isToldWithItsUnitWhereAFormulaPassesItOver(String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row("172.5 mm", 0.25, formula)))
          .containsExactly("A1 number-as-text");
    }

    @Test
    void isNotedOnceHoweverManyThereAre() {
      Finding finding =
          Findings.onlyInCells(
              Grid.sheet("Data").row("172,5", "=A1*2").row("1,5", "=A2*2").row("−2,5E3", "=A3*2"));

      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding))
          .isEqualTo("172,5 is typed as text; numbers typed as text that formulas need: 3");
      assertThat(Findings.fix(finding)).contains("decimal sign");
    }

    @Test
    void isNoStaleResultWhereAProgramOfAnotherLanguageCalculatedWithIt() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(
                          "172,5",
                          new Stored("=A1*2", 345),
                          new Stored("=IFERROR(A1*2,0)", 345),
                          new Stored("=IFERROR(B1,0)+1", 346),
                          new Stored("=C1/2", 172.5))))
          .containsExactly("A1 number-as-text");
    }

    @Test
    void isNoStaleResultWhereTheProgramShowedAnError() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(
                          "172.5", new Stored("=A1*2", "#VALUE!"), new Stored("=B1+1", "#VALUE!"))))
          .containsExactly("A1 number-as-text");
    }

    @Test
    void namesANumberWithItsUnitWhereAFormulaNeedsIt() {
      assertThat(Findings.inCells(Grid.sheet("Data").row("1,5 mm", "=A1*2")))
          .containsExactly("A1 number-as-text");
    }

    // outside check: tables that LibreOffice 7.4.7 set to German calculated and saved
    @ParameterizedTest
    @ValueSource(
        strings = {
          "typed-with-comma.ods",
          "typed-with-comma.xlsx",
          "typed-with-point.ods",
          "typed-with-point.xlsx"
        })
    void isAllThatIsSaidOfTablesTypedInAnotherLanguage(String name) throws Exception {
      assertThat(Findings.in(WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name))))
          .extracting(Findings::brief)
          .containsExactly("E2 number-as-text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=A1&\" mm\"", "=LEN(A1)", "=COUNTA(A1:B1)", "=IF(A1=\"\",0,B1)"})
    void isNotSaidWhereNoFormulaNeedsTheNumber(String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row("172,5", 0.25, formula))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
      "soft, =A1*2",
      "'1,2,3', =A1*2",
      "'1,5', =#REF!+A1",
      "'1,5', =1/0",
      "'1,5', =LAB_READING(A1)"
    })
    void isNotWhyOtherFormulasAreInError(String text, String formula) {
      assertThat(Findings.inCells(Grid.sheet("Data").row(text, formula)))
          .containsExactly("B1 error-cell");
    }

    @Test
    void doesNotHideAStaleResultBesideIt() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data").row("1,5", "=A1*2").row(174, new Stored("=A2/2", 86.2))))
          .containsExactly("A1 number-as-text", "B2 result-stale");
    }
  }

  @Nested
  class NotCheckable {

    @Test
    void namesTheFunctionAndCountsWhatIsLeftOut() {
      Finding finding = Findings.onlyInCells(Grid.sheet("Data").row(1, 2, "=TINV(A1,B1)", "=C1+1"));

      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.found(finding))
          .isEqualTo("the checker does not know the function TINV (=TINV(A1;B1))");
      assertThat(Findings.expected(finding))
          .isEqualTo("nothing: this is no fault; cells that depend on it and are left out: 1");
    }
  }

  @Nested
  class FilesSavedByCalc {

    // outside check: unions of ranges, lines and IF in array formulas as LibreOffice 7.4.7 has them
    @ParameterizedTest
    @ValueSource(
        strings = {"unions-and-lines.ods", "unions-and-lines.xlsx", "unions-and-lines.xls"})
    void areNotCheckableInPlacesButNotStale(String name) throws Exception {
      assertThat(
              Findings.inCells(
                  WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name))))
          .extracting(Findings::brief)
          .contains("C23 not-checkable")
          .allMatch(finding -> finding.matches("[CD]23 not-checkable|[AB]30 .*"));
    }

    // outside check: a named table that LibreOffice 7.4.7 calculated
    @ParameterizedTest
    @ValueSource(strings = {"named-table.ods", "named-table.xlsx"})
    void haveTheStoredValuesForColumnsOfNamedTables(String name) throws Exception {
      assertThat(Findings.in(WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name))))
          .isEmpty();
    }
  }

  @Nested
  class SavedWithoutExtension {

    // outside check: files that LibreOffice 7.4.7 without the extension saved
    @ParameterizedTest
    @ValueSource(
        strings = {"roundtripped-without-extension.ods", "roundtripped-without-extension.xlsx"})
    void isANoteAndTheStudentIsNotBlamed(String name) throws Exception {
      List<Finding> findings =
          Findings.in(WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name)));

      assertThat(findings.stream().flatMap(Finding::apart))
          .extracting(finding -> finding.cell().place() + " " + finding.rule().id())
          .containsExactly(
              "E2 saved-without-extension",
              "H2 error-cell",
              "E5 error-cell",
              "E6 error-cell",
              "E8 error-cell");
      assertThat(findings.get(0).rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(Findings.fix(findings.get(0))).contains("Ctrl+Shift+F9");
    }

    @Test
    void isToldByLostResultsToo() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(
                          new Stored("=TENTHMARK.LAB.READING(1)", "#NAME?"),
                          new Stored("=A1*2", 3))))
          .containsExactly("A1 saved-without-extension");
    }

    // Err:504 is what LibreOffice 7.4.7 with the extension but without Java stores.
    @Test
    void isToldByResultsThatOnlyAMissingJavaExplains() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(
                          new Stored("=TENTHMARK.LAB.READING(1)", "Err:504"),
                          new Stored("=A1*2", "Err:504"))))
          .containsExactly("A1 saved-without-extension");
    }

    @Test
    void isNotSaidOfAnArgumentThatCalcRefuses() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data")
                      .row(9, 0.1, new Stored("=TENTHMARK.LAB.CARRY(3,A1,B1)", "Err:504"))))
          .containsExactly("C1 error-cell");
    }

    @Test
    void isNotSaidOfFilesThatKeepTheNames() {
      assertThat(
              Findings.inCells(
                  Grid.sheet("Data").row(new Stored("=TENTHMARK.LAB.READING(1)", 0.1))))
          .isEmpty();
    }
  }
}
