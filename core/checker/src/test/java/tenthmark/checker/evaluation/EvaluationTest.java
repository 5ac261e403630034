package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Sentences;

class EvaluationTest {

  private static final Sentences ENGLISH = CheckerTexts.english();

  private static final Catalogue CATALOGUE = Catalogue.load();

  private static Evaluation evaluated(Grid grid) {
    return Evaluation.of(grid.workbook(), CATALOGUE);
  }

  private static Value value(Evaluation evaluation, int column, int row) {
    Outcome outcome = evaluation.at(new CellAddress("Wheel", column, row));
    assertThat(outcome).isInstanceOf(Outcome.Known.class);
    return ((Outcome.Known) outcome).value();
  }

  private static String reason(Evaluation evaluation, int column, int row) {
    Outcome outcome = evaluation.at(new CellAddress("Wheel", column, row));
    assertThat(outcome).isInstanceOf(Outcome.NotCheckable.class);
    return ENGLISH.say(((Outcome.NotCheckable) outcome).reason());
  }

  @Nested
  class LabFunctions {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LAB_READING(A1,\"fine\",2)",
          "=lab_reading(A1,\"fine\",2)",
          "=TENTHMARK.LAB.READING(A1,\"fine\",2)",
          "=tenthmark.lab.reading(A1,\"fine\",2)",
          "=2*LAB_READING(A1,\"fine\",)",
          "=SUM(LAB_READING(A1,\"fine\"),LAB_READING(2.5*A1))"
        })
    void areFoundHoweverTheyAreSpelt(String formula) {
      assertThat(value(evaluated(Grid.sheet("Wheel").row(1, formula)), 1, 0))
          .isEqualTo(Value.of(0.5));
    }

    /** As measured in a real Calc: it does not tell a blank cell that stands alone from zero. */
    @Test
    void seeZeroInABlankCellThatStandsAlone() {
      assertThat(value(evaluated(Grid.sheet("Wheel").row(5, "=LAB_RESULT(A1,C9,\"mm\")")), 1, 0))
          .isEqualTo(Value.of("5 mm (exact)"));
    }

    @Test
    void takeRangesWithBlankCellsAndWholeColumns() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet("Wheel").row(0.25, "=LAB_TOTAL(A1:A4)", "=LAB_TOTAL(A:A)").row().row(0.5));

      assertThat(value(evaluation, 1, 0)).isEqualTo(Value.of(0.75));
      assertThat(value(evaluation, 2, 0)).isEqualTo(Value.of(0.75));
    }

    @Test
    void giveAnErrorAndASentenceForABadArgument() {
      Evaluation evaluation = evaluated(Grid.sheet("Wheel").row(0, "=1+LAB_READING(A1)"));

      assertThat(value(evaluation, 1, 0)).isEqualTo(new Value.Fault("#VALUE!"));
      assertThat(evaluation.sentence(new CellAddress("Wheel", 1, 0)).map(ENGLISH::say))
          .contains("LAB_READING: division is 0; it must be a number greater than zero.");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=1+LAB_READING(A1) | LAB_READING: division is 0; it must be a number greater than zero."
              + " Here division is A1.",
          "=5/A1 | Division by zero: A1 is 0.",
          "=2*VLOOKUP(7,A1:A1,1,0) | what stands beside the value that is looked for in a table"
              + " (VLOOKUP of 7, the cells A1:A1, 1 and 0) has no value: VLOOKUP does not find what"
              + " it searches for.",
          "=A1+1 | no error: B1 is A1 plus 1."
        })
    void sayWhyACellHasNoValue(String formula, String sentence) {
      Evaluation evaluation = evaluated(Grid.sheet("Wheel").row(0, formula, "=LAB_WHY(B1)"));

      assertThat(value(evaluation, 2, 0)).isEqualTo(Value.of(sentence));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, -1", "1e300, ''", "'text', 'the text \"text\"'"})
    void meetBadDivisions(String division, String shown) {
      Object cell = division.equals("text") ? division : Double.valueOf(division);
      Evaluation evaluation = evaluated(Grid.sheet("Wheel").row(cell, "=LAB_READING(A1)"));

      if (shown.isEmpty()) {
        assertThat(value(evaluation, 1, 0)).isEqualTo(Value.of(1e299));
      } else {
        assertThat(evaluation.sentence(new CellAddress("Wheel", 1, 0)).map(ENGLISH::say).orElse(""))
            .contains("division is " + shown + "; it must be");
      }
    }

    @Test
    void giveTheFirstCellOfATableOutsideAnArrayFormula() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet("Wheel")
                  .row("reading", "ruler", 0.5)
                  .row("physical", "soft edge", 1.5)
                  .row(
                      "=LAB_BUDGET(A1:C2)",
                      "=INDEX(LAB_BUDGET(A1:C2),2,2)",
                      "=INDEX(LAB_BUDGET(A1:C2),3,3)"));

      assertThat(value(evaluation, 0, 2)).isEqualTo(Value.of("reading"));
      assertThat(value(evaluation, 1, 2)).isEqualTo(Value.of("soft edge"));
      assertThat(value(evaluation, 2, 2)).isEqualTo(Value.of(2));
    }
  }

  @Nested
  class NotCheckable {

    @Test
    void isAFunctionThatNobodyKnowsAndWhatDependsOnIt() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet("Wheel").row("=LET(x,1,x+1)", "=A1+1", "=IFERROR(B1,0)", 5, "=D1*2"));

      assertThat(reason(evaluation, 0, 0)).contains("LET");
      assertThat(reason(evaluation, 1, 0))
          .isEqualTo("it depends on A1: the checker does not know the function LET");
      assertThat(reason(evaluation, 2, 0)).contains("depends on A1");
      assertThat(value(evaluation, 4, 0)).isEqualTo(Value.of(10));
    }

    @Test
    void isAFunctionThatTheEvaluatorLacks() {
      Evaluation evaluation =
          evaluated(Grid.sheet("Wheel").row(1, 2, "=TINV(A1,B1)", "=no_such_function(A1)"));

      assertThat(reason(evaluation, 2, 0)).isEqualTo("the checker does not know the function TINV");
      assertThat(reason(evaluation, 3, 0))
          .isEqualTo("the checker does not know the function no_such_function");
    }

    /** What the libraries say is in their words, in English and about their own insides. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+*2", "=2*nowhere", "=A1:", "=SUM(A1", "=SUM(1 2)"})
    void isAFormulaThatCannotBeReadWithoutTheWordsOfALibrary(String formula) {
      assertThat(reason(evaluated(Grid.sheet("Wheel").row(1, 2, formula)), 2, 0))
          .isIn(
              "the checker cannot read the formula: a name in it stands for nothing, or it is"
                  + " written as no formula that the checker knows",
              "the checker cannot calculate the formula: a part of it is not among what the"
                  + " checker calculates");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=LARGE((A1:B1,C1),1)", "=SUM((A1:B1,C1),2)", "=LARGE(A1:B1~C1,1)"})
    void isAUnionOfRangesThatIsNoListOfArguments(String formula) {
      assertThat(reason(evaluated(Grid.sheet("Wheel").row(1, 2, 3, formula)), 3, 0)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=SUM(Points[Force])",
          "=Points[[#This Row],[Force]]*2",
          "=AVERAGE(Points[[#All],[Force]:[Extension]])"
        })
    void isAColumnOfANamedTable(String formula) {
      assertThat(reason(evaluated(Grid.sheet("Wheel").row(1, 2, formula)), 2, 0)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=LINEST(A2:A4,B2:C4)",
          "=LINEST(A2:A3,B2:B3)",
          "=LINEST(A2:A5,B2:B5)",
          "=LINEST(A2:A4,B2:B4,1,1)",
          "=LINEST(A2:A4)+LINEST()"
        })
    void isALineOfSeveralVariablesOrThatIsNone(String formula) {
      assertThat(
              reason(
                  evaluated(
                      Grid.sheet("Wheel")
                          .row(formula)
                          .row(1, 2, 3)
                          .row(2, 4, 5)
                          .row(3, 6, 1)
                          .row("4", 8)),
                  0,
                  0))
          .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=[1]Other!A1", "='[other.xlsx]Sheet1'!A1", "=[other.xlsx]Sheet1!A1+1"})
    void isAnotherFile(String formula) {
      assertThat(reason(evaluated(Grid.sheet("Wheel").row(formula)), 0, 0))
          .isEqualTo("the formula refers to another file, which is never opened");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+", "=foo+1", "=Data[Value]", "=(((", "=\"", "=A1:A2~B1"})
    void isAFormulaThatCannotBeRead(String formula) {
      assertThat(reason(evaluated(Grid.sheet("Wheel").row(formula)), 0, 0)).isNotBlank();
    }
  }

  @Nested
  class Formulas {

    @Test
    void followNamesSheetsAndArrays() {
      Evaluation evaluation =
          evaluated(
              Grid.sheet("Wheel")
                  .row("=SUM(arms)", "='Brake lever'!A1*2", "=SUM({1,2;3,4})", "=-2^2", "=50%")
                  .andSheet("Brake lever")
                  .row(3, 4)
                  .name("Arms", "'Brake lever'!$A$1:$B$1"));

      assertThat(value(evaluation, 0, 0)).isEqualTo(Value.of(7));
      assertThat(value(evaluation, 1, 0)).isEqualTo(Value.of(6));
      assertThat(value(evaluation, 2, 0)).isEqualTo(Value.of(10));
      assertThat(value(evaluation, 3, 0)).isEqualTo(Value.of(4));
      assertThat(value(evaluation, 4, 0)).isEqualTo(Value.of(0.5));
    }

    @Test
    void mayFormLongChainsAndCircles() {
      Grid grid = Grid.sheet("Wheel");
      for (int row = 1; row < 20_000; row++) {
        grid.row("=A" + (row + 1) + "+1");
      }
      Evaluation chain = evaluated(grid.row(1));
      Evaluation circle = evaluated(Grid.sheet("Wheel").row("=B1", "=A1"));

      assertThat(value(chain, 0, 0)).isEqualTo(Value.of(20_000));
      assertThat(value(circle, 0, 0)).isInstanceOf(Value.Fault.class);
    }

    // outside check: results of LibreOffice Calc 7.4.7
    @ParameterizedTest
    @CsvSource({
      "=-2^2, 4",
      "=-(2^2), -4",
      "=5-2^2, 1",
      "=-2^2^3, 64",
      "=--3^2, 9",
      "=-A1^2+1, 10",
      "=EXP(-A1^2), 8103.08392757538",
      "=-(A1+1)^2, 16",
      "=2^-1, 0.5",
      "=-2^-2, 0.25",
      "=1-SUM(A1;2)^2, -24",
      "=-SUM(A1;2)^2, 25",
      "=IF(A1>1;-A1^2;0), 9"
    })
    void bindASignTighterThanAPower(String formula, double expected) {
      Evaluation evaluation = evaluated(Grid.sheet("Wheel").row(3, formula.replace(';', ',')));

      assertThat(((Value.Numeric) value(evaluation, 1, 0)).number())
          .isCloseTo(expected, within(1e-9));
    }

    @Test
    void knowWhatChangesByItself() {
      Evaluation evaluation = evaluated(Grid.sheet("Wheel").row("=NOW()", "=A1+1", "=1+1"));

      assertThat(evaluation.changesByItself(new CellAddress("Wheel", 1, 0))).isTrue();
      assertThat(evaluation.changesByItself(new CellAddress("Wheel", 2, 0))).isFalse();
    }
  }

  @Nested
  class FilesSavedByCalc {

    /** What an office without the extension stores for LAB functions. */
    private static final Value LOST = new Value.Fault("#NAME?");

    // outside check: the values that LibreOffice 7.4.7 computed and stored
    @ParameterizedTest
    @ValueSource(
        strings = {
          "good.ods",
          "good.xlsx",
          "native-formulas.ods",
          "native-formulas.xlsx",
          "native-formulas.xls",
          "lab-table.ods",
          "lab-table.xlsx",
          "lab-table.xls",
          "unions-and-lines.ods",
          "unions-and-lines.xlsx",
          "unions-and-lines.xls"
        })
    void agreeWithTheValuesStored(String name) throws Exception {
      Workbook workbook = WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name));
      Evaluation evaluation = Evaluation.of(workbook, CATALOGUE);
      List<Cell> formulas =
          workbook.sheets().stream()
              .flatMap(Sheet::cells)
              .filter(cell -> cell.content() instanceof Content.Formula)
              .toList();

      assertThat(formulas).hasSizeGreaterThan(8);
      for (Cell cell : formulas) {
        if (evaluation.at(cell.address()) instanceof Outcome.Known known
            && !evaluation.changesByItself(cell.address())) {
          Optional<Value> kept = Evaluation.stored(cell.content()).filter(v -> !v.equals(LOST));
          if (kept.isEmpty()) {
            continue;
          }
          Value stored = kept.get();
          if (stored instanceof Value.Numeric number) {
            assertThat(known.value()).as(cell.toString()).isInstanceOf(Value.Numeric.class);
            assertThat(((Value.Numeric) known.value()).number())
                .as(cell.toString())
                .isCloseTo(number.number(), within(1e-12 * Math.abs(number.number())));
          } else if (stored instanceof Value.Fault) {
            assertThat(known.value()).as(cell.toString()).isInstanceOf(Value.Fault.class);
          } else {
            assertThat(known.value()).as(cell.toString()).isEqualTo(stored);
          }
        }
      }
    }

    @ParameterizedTest
    @CsvSource({
      "good.ods",
      "good.xlsx",
      "roundtripped-without-extension.ods",
      "roundtripped-without-extension.xlsx"
    })
    void calculateAgainWithoutTheExtension(String name) throws Exception {
      Workbook workbook = WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name));
      Evaluation evaluation = Evaluation.of(workbook, CATALOGUE);

      assertThat(evaluation.at(new CellAddress("Sheet1", 4, 1)))
          .isEqualTo(new Outcome.Known(Value.of(0.5)));
      assertThat(evaluation.at(new CellAddress("Sheet1", 4, 6)))
          .isEqualTo(new Outcome.Known(Value.of(3)));
      assertThat(
              evaluation.sentence(new CellAddress("Sheet1", 4, 4)).map(ENGLISH::say).orElseThrow())
          .startsWith("LAB_READING: division is 0");
    }
  }
}
