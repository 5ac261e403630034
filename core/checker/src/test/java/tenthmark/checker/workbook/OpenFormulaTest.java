package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** OASIS OpenDocument 1.3, part 4: 5.6 and 5.8 references, 5.13 inline arrays, 5.4 texts. */
class OpenFormulaTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          of:=[.B4]*SUM([.B5:.B9])              | B4*SUM(B5:B9)
          of:=[$Sheet1.B4]+[.$B$4]              | Sheet1!B4+$B$4
          of:=[$'My sheet'.B4]                  | 'My sheet'!B4
          of:=[$'It''s [1]; done'.$A$1:.B2]     | 'It''s [1]; done'!$A$1:B2
          of:=[$Jan.A1:$Mar.B2]                 | 'Jan:Mar'!A1:B2
          of:=[.A:.A]                           | A:A
          of:=[.1:.3]                           | 1:3
          of:=IF([.A1]>1;"a;b ""[.C1]"" c";2)   | IF(A1>1,"a;b ""[.C1]"" c",2)
          of:=MAX(LAB_SHAPED([.A1];"arcsine");1)| MAX(LAB_SHAPED(A1,"arcsine"),1)
          of:=[.#REF!]+[$Sheet1.#REF!]          | #REF!+#REF!
          of:=IFERROR([.A1];#DIV/0!)            | IFERROR(A1,#DIV/0!)
          of:=[.A1:.B2]![.B2:.C3]               | A1:B2 B2:C3
          of:=COM.MICROSOFT.T.INV.2T(0.05;4)    | T.INV.2T(0.05,4)
          of:=LEGACY.NORMSDIST(1)               | NORMSDIST(1)
          oooc:=SUM([.A1];2)                    | SUM(A1,2)
          msoxl:=SUM(A1,Sheet2!B4)              | SUM(A1,Sheet2!B4)
          =[.A1]                                | A1
          """)
  void isTranslated(String written, String expected) {
    assertThat(OpenFormula.translate(written)).isEqualTo(expected);
  }

  @Test
  void keepsInlineArraysByRow() {
    assertThat(OpenFormula.translate("of:=SUM({1;\"a;|\"|3;4})")).isEqualTo("SUM({1,\"a;|\";3,4})");
  }

  @Test
  void survivesTextsThatDoNotEnd() {
    assertThat(OpenFormula.translate("of:=\"abc")).isEqualTo("\"abc");
    assertThat(OpenFormula.translate("of:=[.A1")).isEqualTo("A1");
    assertThat(OpenFormula.translate("of:={1;2")).isEqualTo("{1,2");
  }
}
