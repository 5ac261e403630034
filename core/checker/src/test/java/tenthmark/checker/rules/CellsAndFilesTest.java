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
      Finding finding = Findings.only(Grid.sheet("Data").row(0, "=LAB_READING(A1)", "=B1*2"));

      assertThat(finding.rule().id()).isEqualTo("error-cell");
      assertThat(finding.cell().place()).isEqualTo("B1");
      assertThat(finding.found())
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
      assertThat(Findings.in(Grid.sheet("Data").row(formula))).containsExactly("A1 error-cell");
    }

    @Test
    void namesTheCellOfARange() {
      Finding finding =
          Findings.only(Grid.sheet("Data").row(0.5, "=LAB_TOTAL(A1:A3)").row("soft").row(0.1));

      assertThat(finding.found()).contains("row 2").contains("the text \"soft\"");
    }

    @ParameterizedTest
    @CsvSource({"=1/0, #DIV/0!", "=A9:A10+\"x\", #VALUE!", "=SQRT(-1), #NUM!", "=#REF!+1, #REF!"})
    void namesTheErrorOfTheSpreadsheet(String formula, String name) {
      assertThat(Findings.only(Grid.sheet("Data").row(formula)).found()).startsWith(name);
    }

    @Test
    void isNotSaidOfAPointLeftOutOfAChart() {
      assertThat(Findings.in(Grid.sheet("Data").row("=NA()"))).isEmpty();
    }
  }

  @Nested
  class NotCheckable {

    @Test
    void namesTheFunctionAndCountsWhatIsLeftOut() {
      Finding finding = Findings.only(Grid.sheet("Data").row(1, 2, "=LINEST(A1:B1)", "=C1+1"));

      assertThat(finding.rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.found())
          .isEqualTo("the checker does not know the function LINEST (=LINEST(A1:B1))");
      assertThat(finding.expected())
          .isEqualTo("nothing: this is no fault; cells that depend on it and are left out: 1");
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

      assertThat(findings)
          .extracting(finding -> finding.cell().place() + " " + finding.rule().id())
          .containsExactly(
              "E2 saved-without-extension",
              "H2 error-cell",
              "E5 error-cell",
              "E6 error-cell",
              "E8 error-cell");
      assertThat(findings.get(0).rule().severity()).isEqualTo(Severity.NOTE);
      assertThat(findings.get(0).rule().fix()).contains("Ctrl+Shift+F9");
    }

    @Test
    void isToldByLostResultsToo() {
      assertThat(
              Findings.in(
                  Grid.sheet("Data")
                      .row(
                          new Stored("=TENTHMARK.LAB.READING(1)", "#NAME?"),
                          new Stored("=A1*2", 3))))
          .containsExactly("A1 saved-without-extension");
    }

    @Test
    void isNotSaidOfFilesThatKeepTheNames() {
      assertThat(Findings.in(Grid.sheet("Data").row(new Stored("=TENTHMARK.LAB.READING(1)", 0.1))))
          .isEmpty();
    }
  }
}
