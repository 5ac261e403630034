package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/** Lines, parabolas and powers as first-year students fit them in the spreadsheet itself. */
class RegressionTest {

  private static final Catalogue CATALOGUE = Catalogue.load();

  /** Times of a rolling wheel over distances, invented, and formulas below them in A7. */
  private static Outcome outcome(String formula) {
    Workbook workbook =
        Grid.sheet("Wheel")
            .row(0.2, 0.113, 0.04)
            .row(0.4, 0.305, 0.16)
            .row(0.6, 0.592, 0.36)
            .row(0.8, 0.954, 0.64)
            .row(1.0, 1.411, 1.0)
            .row(2, "two", -1)
            .row(formula)
            .workbook();
    return Evaluation.of(workbook, CATALOGUE).at(new CellAddress("Wheel", 0, 6));
  }

  // outside check: every value that LibreOffice 7.4.7 computed and stored; among them those of
  // Longley, for which NIST StRD certifies the values
  @ParameterizedTest
  @ValueSource(strings = {"ods", "xlsx", "xls"})
  void agreesWithCalc(String ending) throws Exception {
    Workbook workbook =
        WorkbookFile.read(
            Path.of("src/test/resources/saved-by-calc/lines-of-several-variables." + ending));
    Evaluation evaluation = Evaluation.of(workbook, CATALOGUE);
    List<Cell> formulas =
        workbook.sheets().stream()
            .flatMap(Sheet::cells)
            // Calc stores no errors in .xls.
            .filter(cell -> Evaluation.stored(cell.content()).isPresent())
            .toList();

    assertThat(formulas).hasSizeGreaterThan(180);
    for (Cell cell : formulas) {
      Value stored = Evaluation.stored(cell.content()).orElseThrow();
      assertThat(evaluation.at(cell.address()))
          .as(cell.toString())
          .isInstanceOf(Outcome.Known.class);
      Value known = ((Outcome.Known) evaluation.at(cell.address())).value();
      if (stored instanceof Value.Numeric number) {
        assertThat(known).as(cell.toString()).isInstanceOf(Value.Numeric.class);
        assertThat(((Value.Numeric) known).number())
            .as(cell.toString())
            .isCloseTo(number.number(), within(1e-12 + 1e-9 * Math.abs(number.number())));
      } else {
        assertThat(known).as(cell.toString()).isEqualTo(stored);
      }
    }
  }

  // outside check: LibreOffice Calc 7.4.7
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "=INDEX(LINEST(B1:B5,A1:A5,TRUE,TRUE),2,1)      | 0.147669394256224",
        "=INDEX(LINEST(B1:B5,A1:A5^{1,2}),1,1)          | 1.08035714285714",
        "=SLOPE(LN(B1:B5),LN(A1:A5))                    | 1.56725968485937",
        "=SUMPRODUCT(SQRT(A1:A5)*B1:B5)                 | 2.96627884196664",
        "=STEYX(B1:B5,A1:A5)/SQRT(DEVSQ(A1:A5))         | 0.147669394256224"
      })
  void calculatesWithWholeRangesInOneCell(String formula, double expected) {
    assertThat(outcome(formula))
        .isInstanceOfSatisfying(
            Outcome.Known.class,
            known ->
                assertThat(((Value.Numeric) known.value()).number())
                    .isCloseTo(expected, within(1e-12)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "=LINEST(B1:B5,A1:A4)               | LINEST: y and x do not hold equally many values",
        "=TREND(B1:B5,A1:C5,A1:B1)          | TREND: y and x do not hold equally many values",
        "=LOGEST(C3:C6,A3:A6)               | the logarithm of a number that is not positive",
        "=LINEST(B1:B6,A1:A6)               | LINEST of cells that hold no number",
        "=LINEST(A1:A3,B1:C3)               | LINEST: the points are too few: with 3 fitted at least 4 are needed.",
        "=SLOPE(LN(B1:B5),A1:A5)+LN(A1:A5)  | it calculates with whole ranges in one cell",
        "=SUMPRODUCT(LN(A1:XFD6000))        | it calculates with more than 1048576 cells at once"
      })
  void saysWhatItCannotDo(String formula, String reason) {
    assertThat(outcome(formula))
        .isInstanceOfSatisfying(
            Outcome.NotCheckable.class,
            unknown -> assertThat(CheckerTexts.english().say(unknown.reason())).isEqualTo(reason));
  }

  @Test
  void leavesFormulasAloneThatTakeOneCellOfEachRange() {
    assertThat(outcome("=LN(A1:A5)")).isEqualTo(new Outcome.Known(new Value.Fault("#VALUE!")));
    assertThat(outcome("=SUM(A1:A5)*SLOPE(B1:B5,A1:A5)")).isInstanceOf(Outcome.Known.class);
  }
}
