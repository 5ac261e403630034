package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/** Names stand for formulas, and their relative references move with the cell that uses them. */
class NamesTest {

  private static final String SHEET = "Sheet1";

  private static Evaluation evaluated(Grid grid) {
    return Evaluation.of(grid.workbook(), Catalogue.load());
  }

  private static Outcome at(Evaluation evaluation, int column, int row) {
    return evaluation.at(new CellAddress(SHEET, column, row));
  }

  private static double number(Evaluation evaluation, int column, int row) {
    return evaluation.number(new CellAddress(SHEET, column, row)).orElseThrow();
  }

  /**
   * names.* were saved by LibreOffice 7.4.7 with the extension: names for calculations, numbers,
   * ranges and other names, relative ones and ones of a single sheet, and LAB_CARRY through them.
   */
  @Nested
  class SavedByCalc {

    @ParameterizedTest
    @ValueSource(strings = {"names.ods", "names.xls"})
    void giveTheValuesThatCalcStored(String file) throws Exception {
      Workbook workbook = WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", file));
      Evaluation evaluation = Evaluation.of(workbook, Catalogue.load());
      List<Cell> formulas =
          workbook.sheets().stream()
              .flatMap(sheet -> sheet.cells())
              .filter(cell -> cell.content() instanceof Content.Formula)
              .toList();
      assertThat(formulas).hasSizeGreaterThan(15);
      for (Cell cell : formulas) {
        assertStored(evaluation, cell);
      }
    }

    private void assertStored(Evaluation evaluation, Cell cell) {
      double stored = ((Value.Numeric) Evaluation.stored(cell.content()).orElseThrow()).number();
      assertThat(evaluation.number(cell.address()))
          .as(cell.toString())
          .hasValueSatisfying(value -> assertThat(value).isCloseTo(stored, within(1e-13 * stored)));
    }

    /** Calc itself writes #REF! for a name that, seen from A1, would leave the sheet. */
    @Test
    void mayHaveLostTheirCellsOnTheWay() throws Exception {
      Workbook workbook = WorkbookFile.read(Path.of("src/test/resources/saved-by-calc/names.xlsx"));
      Evaluation evaluation = Evaluation.of(workbook, Catalogue.load());
      int known = 0;
      for (Cell cell : workbook.sheets().stream().flatMap(sheet -> sheet.cells()).toList()) {
        if (!(cell.content() instanceof Content.Formula)) {
          continue;
        }
        if (evaluation.at(cell.address()) instanceof Outcome.NotCheckable lost) {
          assertThat(lost.reason().toString()).contains("reason.name.lost");
        } else {
          assertStored(evaluation, cell);
          known++;
        }
      }
      assertThat(known).isGreaterThan(8);
    }
  }

  @Nested
  class Formulas {

    // derivatives by hand: the uncertainty of B1 is 0.7 there
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=diam | 6 | 1.4",
          "=offs | 13 | 0.7",
          "=gee*B1 | 29.43 | 6.867",
          "=area | 36 | 16.8",
          "=SUM(both)*2 | 6 | 1.4",
          "=Sheet1!diam+0 | 6 | 1.4"
        })
    void areCalculatedAndCarriedThrough(String formula, double value, double carried) {
      Evaluation evaluation =
          evaluated(
              Grid.sheet(SHEET)
                  .row("arm", 3, 0.7)
                  .row("result", formula, "=LAB_CARRY(B2,B1:B1,C1:C1)")
                  .name("diam", "2*Sheet1!$B$1")
                  .name("offs", "10+Sheet1!$B$1")
                  .name("gee", "9.81")
                  .name("area", "diam^2")
                  .name("both", "Sheet1!$B$1:$B$1"));
      assertThat(number(evaluation, 1, 1)).isCloseTo(value, within(1e-13));
      assertThat(number(evaluation, 2, 1)).isCloseTo(carried, within(1e-13));
    }

    @Test
    void areNoRanges() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet(SHEET)
                  .row(1, 2)
                  .name("diam", "2*Sheet1!$B$1")
                  .name("arms", "Sheet1!$A$1:$B$1"));
      assertThat(evaluation.named("diam", SHEET)).isEmpty();
      assertThat(evaluation.named("arms", SHEET)).isPresent();
    }

    @Test
    void mayCallLabFunctionsAndChangeByThemselves() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet(SHEET)
                  .row(1, "=tick*2", "=chance*2")
                  .name("tick", "LAB_READING(Sheet1!$A$1)")
                  .name("chance", "RAND()"));
      assertThat(evaluation.dependsOnLab(new CellAddress(SHEET, 1, 0))).isTrue();
      assertThat(number(evaluation, 1, 0)).isEqualTo(0.2);
      assertThat(evaluation.changesByItself(new CellAddress(SHEET, 2, 0))).isTrue();
    }

    /** A number by name is one value, so that nothing is calculated with ranges outside SLOPE. */
    @Test
    void maySitBesideFunctionsOfRanges() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet(SHEET)
                  .row(1, 2, "=SLOPE(LN(B1:B3),A1:A3)*gee")
                  .row(2, 4)
                  .row(3, 8)
                  .name("gee", "2"));
      assertThat(number(evaluation, 2, 0)).isCloseTo(2 * Math.log(2), within(1e-14));
    }
  }

  @Nested
  class RelativeOnes {

    /** The cell left of the user: as seen from A1 it is the last one of the row (ECMA-376). */
    private final Grid grid =
        Grid.sheet(SHEET)
            .row(2, "=left*10", "=left*10")
            .row(3, "=left*10", "=LAB_CARRY(B2,A2:A2,D2:D2)", 0.5)
            .row(5, "=SUM(run)")
            .name("left", "Sheet1!XFD1")
            .name("run", "Sheet1!XFD$1:XFD1");

    @Test
    void moveWithTheCellThatUsesThem() {
      Evaluation evaluation = evaluated(grid);
      assertThat(number(evaluation, 1, 0)).isEqualTo(20);
      assertThat(number(evaluation, 2, 0)).isEqualTo(200);
      assertThat(number(evaluation, 1, 1)).isEqualTo(30);
      assertThat(number(evaluation, 1, 2)).isEqualTo(10);
      assertThat(number(evaluation, 2, 1)).isEqualTo(5);
    }

    @Test
    void leadToTheCellsThatTheyMean() {
      Workbook workbook = grid.workbook();
      Evaluation evaluation = Evaluation.of(workbook, Catalogue.load());
      Cell user = workbook.at(new CellAddress(SHEET, 1, 1)).orElseThrow();
      assertThat(evaluation.precedents(user))
          .extracting(Cell::address)
          .containsExactly(new CellAddress(SHEET, 0, 1));
    }

    @Test
    void areTheSameFormulaInEachCopy() {
      Workbook workbook = grid.workbook();
      Evaluation evaluation = Evaluation.of(workbook, Catalogue.load());
      Cell one = workbook.at(new CellAddress(SHEET, 1, 0)).orElseThrow();
      Cell other = workbook.at(new CellAddress(SHEET, 1, 1)).orElseThrow();
      assertThat(evaluation.areCopies(one, other)).isTrue();
    }
  }

  @Test
  void aNameThatStandsForItselfIsNotCheckable() {
    Evaluation evaluation =
        evaluated(Grid.sheet(SHEET).row("=ping").name("ping", "pong+1").name("pong", "ping+1"));
    assertThat(at(evaluation, 0, 0)).isInstanceOf(Outcome.NotCheckable.class);
  }
}
