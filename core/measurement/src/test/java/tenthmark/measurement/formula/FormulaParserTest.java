package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Name;
import tenthmark.measurement.formula.Expression.RangeReference;

class FormulaParserTest {

  private final Formulas formulas = new Formulas();

  @Nested
  class Precedence {

    // values measured in LibreOffice 7.4.7; unary minus before ^ and ^ from the left are also
    // OpenDocument 1.2 part 2, 5.5
    @ParameterizedTest
    @CsvSource({
      "-2^2, 4",
      "2^3^2, 64",
      "2^-1, 0.5",
      "-2^-2, 0.25",
      "-2%, -0.02",
      "10%^2, 0.01",
      "5%%, 0.0005",
      "2^3%, 1.02101212570719",
      "2--3, 5",
      "+-+2, -2",
      "2+3*4, 14",
      "(2+3)*4, 20",
      "8/4/2, 1",
      "8-4-2, 2",
      "2*3^2, 18",
      "1/3*3=1, 1",
      "1<2<3, 1",
      "3>2>1, 0",
      "1+1=2, 1",
      ".5+5., 5.5",
      "1.5e-3, 0.0015",
      "1.5E+3, 1500",
      "TRUE+1, 2",
      "false, 0"
    })
    void isCalcs(String formula, double expected) {
      assertThat(value("=" + formula)).isCloseTo(expected, within(1e-14));
    }
  }

  @Nested
  class Cells {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=B4",
          "=$B$4",
          "=$B4",
          "=B$4",
          "=b4",
          "of:=[.B4]",
          "of:=[.$B$4]",
          " = B4 ",
          "=+B4"
        })
    void onTheFormulasOwnSheet(String text) {
      assertThat(formulas.inCell(text).references()).containsExactly(new CellReference(null, 1, 3));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "='Brake lever'!B4",
          "='Brake lever'!$B$4",
          "=$'Brake lever'.B4",
          "='Brake lever'.$B$4",
          "of:=[$'Brake lever'.B4]",
          "of:=['Brake lever'.$B$4]"
        })
    void onASheetWithAQuotedName(String text) {
      assertThat(formulas.inCell(text).references())
          .containsExactly(new CellReference("Brake lever", 1, 3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=Timing!B4", "=$Timing.B4", "=Timing.$B$4", "of:=[$Timing.B4]"})
    void onASheetWithAPlainName(String text) {
      assertThat(formulas.inCell(text).references())
          .containsExactly(new CellReference("Timing", 1, 3));
    }

    @Test
    void onASheetWhoseNameHoldsAQuoteOrADot() {
      assertThat(formulas.inCell("='Ann''s run'!A1+$'v1.2'.A1+[$'v1.2'.A1]").references())
          .containsExactly(
              new CellReference("Ann's run", 0, 0),
              new CellReference("v1.2", 0, 0),
              new CellReference("v1.2", 0, 0));
    }

    @Test
    void upToTheLastColumnAndRow() {
      assertThat(formulas.inCell("=XFD1048576").references())
          .containsExactly(new CellReference(null, 16_383, 1_048_575));
      assertThat(formulas.inCell("=XFE1+A1048577").references())
          .containsExactly(new Name("XFE1"), new Name("A1048577"));
    }
  }

  @Nested
  class Ranges {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=SUM(B4:C9)",
          "=SUM($B$4:$C$9)",
          "=SUM(C9:B4)",
          "=SUM(B9:C4)",
          "of:=SUM([.B4:.C9])",
          "of:=SUM([.B4:.$C$9])"
        })
    void onTheFormulasOwnSheet(String text) {
      assertThat(formulas.inCell(text).references())
          .containsExactly(new RangeReference(null, 1, 3, 2, 8));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=SUM(Timing!B4:C9)",
          "=SUM(Timing!B4:Timing!C9)",
          "=SUM($Timing.B4:C9)",
          "=SUM($Timing.B4:$Timing.C9)",
          "=SUM('Timing'!B4:C9)",
          "=SUM($'Timing'.B4:$'Timing'.C9)",
          "of:=SUM([$Timing.B4:.C9])",
          "of:=SUM([$Timing.B4:$Timing.C9])"
        })
    void onAnotherSheet(String text) {
      assertThat(formulas.inCell(text).references())
          .containsExactly(new RangeReference("Timing", 1, 3, 2, 8));
    }

    @Test
    void ofWholeColumnsAndRows() {
      assertThat(formulas.inCell("=SUM(B:C)+SUM($2:3)").references())
          .containsExactly(
              new RangeReference(null, 1, 0, 2, 1_048_575),
              new RangeReference(null, 0, 1, 16_383, 2));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "=SUM(Timing!B4:Other!C9)",
          "=SUM($Timing.B4:$Other.C9)",
          "=SUM($'Timing'.B4:$'Other'.C9)",
          "of:=SUM([$Timing.B4:$Other.C9])",
          "=SUM(B4:C)",
          "=SUM(B4:mass)"
        })
    void areRefusedIfTheyAreNone(String text) {
      assertThatThrownBy(() -> formulas.inCell(text)).isInstanceOf(FormulaException.class);
    }
  }

  @Nested
  class Names {

    @Test
    void inADocumentAreWhatIsNoCell() {
      assertThat(formulas.inCell("=lever_arm*mass.kg+B4").references())
          .containsExactly(
              new Name("lever_arm"), new Name("mass.kg"), new CellReference(null, 1, 3));
    }

    @Test
    void mayBeThoseOfAnotherSheet() {
      assertThat(formulas.inCell("=Timing!mass+'My sheet'!mass").references())
          .containsExactly(new Name("Timing", "mass"), new Name("My sheet", "mass"));
    }

    @Test
    void inATextOfNamesMayLookLikeCells() {
      assertThat(formulas.withNames("4*PI()^2*L1/T2^2 + μ·0".replace("·", "*")).references())
          .containsExactly(new Name("L1"), new Name("T2"), new Name("μ"));
    }
  }

  @Nested
  class Calls {

    @ParameterizedTest
    @ValueSource(strings = {"=LOG(8;2)", "=LOG(8,2)", "=log(8 ; 2)", "=_xlfn.LOG(8,2)"})
    void takeEitherSeparator(String text) {
      assertThat(value(text)).isEqualTo(3);
    }

    @Test
    void takeEmptyArguments() {
      assertThat(value("=IF(2;;3)")).isZero();
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=SQRT(1,5) | SQRT has 2 arguments; it takes 1.",
          "=ATAN2(1) | ATAN2 has 1 arguments; it takes 2.",
          "=LOG() | LOG has 0 arguments; it takes 1 to 2."
        })
    void areRefusedWithTheWrongNumberOfArguments(String text, String sentence) {
      assertThatThrownBy(() -> formulas.inCell(text)).hasMessage(sentence);
    }
  }

  @Nested
  class Mistakes {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=2*B4+ | the formula ends too early.",
          "= | the formula ends too early.",
          "=(B4 | the formula ends too early.",
          "=2B4 | the formula cannot be read at place 3, before \"B4\".",
          "=1,5*B4 | the formula cannot be read at place 3, before \",\"; write decimals with a"
              + " point.",
          "=B4)*2 | the formula cannot be read at place 4, before \")\".",
          "=B4×2 | the character × at place 4 has no meaning in a formula.",
          "=\"abc | the quote at place 2 is not closed.",
          "=[.B4 | the bracket at place 2 is not closed.",
          "=SUM({1;2,3}) | the formula cannot be read at place 12, before \"}\".",
          "=SUM({A1;2}) | the formula cannot be read at place 7, before \"A1\".",
          "=SUM({}) | the formula cannot be read at place 7, before \"}\".",
          "=SUM({1;{2}}) | the formula cannot be read at place 9, before \"{\"; an array here is"
              + " not supported.",
          "=#REF!+1 | the formula cannot be read at place 2, before \"#\"; the formula holds an"
              + " error or a lost reference.",
          "of:=[.#REF!]*2 | a reference is lost (#REF!).",
          "='file:///a.ods'#$Sheet1.A1 | a reference to another file is not supported:"
              + " file:///a.ods.",
          "of:=['file:///a.ods'#$Sheet1.A1] | a reference to another file is not supported.",
          "=[1]Sheet1!A1 | [1] is not a cell or range of this file.",
          "=Records[mass] | a reference to a part of a table is not supported: Records."
        })
    void areToldInASentence(String text, String sentence) {
      assertThatThrownBy(() -> formulas.inCell(text))
          .isInstanceOf(FormulaException.class)
          .hasMessage(sentence);
    }

    @Test
    void includeTooMuchLengthAndDepth() {
      String longest = "=1" + "+1".repeat(5000);
      assertThatThrownBy(() -> formulas.inCell(longest)).hasMessageContaining("longer than 8192");
      String nested = "=" + "SQRT(".repeat(200) + "1" + ")".repeat(200);
      assertThatThrownBy(() -> formulas.inCell(nested))
          .hasMessageContaining("nested more than 64 levels deep");
    }
  }

  @Nested
  class Length {

    @Test
    void ofASumIsNotDepth() {
      assertThat(value("=1" + "+1".repeat(4000))).isEqualTo(4001);
      assertThat(value("=" + "-".repeat(8000) + "1")).isEqualTo(1);
      assertThat(value("=2" + "*1".repeat(2000) + "%".repeat(2))).isEqualTo(2e-4);
    }
  }

  private double value(String text) {
    return new NamedModel(withoutCells(text), List.of()).value();
  }

  private Formula withoutCells(String text) {
    Formula formula = formulas.inCell(text);
    assertThat(formula.references()).isEmpty();
    return formula;
  }
}
