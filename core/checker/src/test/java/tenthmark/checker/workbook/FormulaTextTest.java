package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          TENTHMARK.LAB.READING(A1)                  | LAB_READING(A1)
          tenthmark.lab.reading(A1)*2                | LAB_READING(A1)*2
          1+Tenthmark.Lab.Total (B2:B5)              | 1+LAB_TOTAL (B2:B5)
          lab_reading(A1)                            | LAB_READING(A1)
          _xll.TENTHMARK.LAB.GAP(1,2,3,4)            | LAB_GAP(1,2,3,4)
          _xlfn.LAB_GAP(1,2,3,4)                     | LAB_GAP(1,2,3,4)
          "tenthmark.lab.reading(1)"&A1              | "tenthmark.lab.reading(1)"&A1
          'tenthmark.lab.x('!A1+STDEV.S(A1:A3)       | 'tenthmark.lab.x('!A1+STDEV.S(A1:A3)
          my_lab_reading(A1)                         | my_lab_reading(A1)
          """)
  void namesLabFunctionsAsTheyAreTyped(String written, String expected) {
    assertThat(FormulaText.uniform(written)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          SUM(A1:A2~B4)                              | SUM(A1:A2,B4)
          2*stdev.s(A1:A2~$B$4:$B$5,C1)+1            | 2*stdev.s(A1:A2,$B$4:$B$5,C1)+1
          MAX('a~b (c)'!A1~'it''s'!B1~D4)            | MAX('a~b (c)'!A1,'it''s'!B1,D4)
          COUNT((A1:A2,'b c'!B4))*2                  | COUNT(A1:A2,'b c'!B4)*2
          SUM((A1:A2,B4),C1)                         | SUM((A1:A2,B4),C1)
          LARGE((A1:A2,B4),2)                        | LARGE((A1:A2,B4),2)
          LARGE(A1:A2~B4,2)                          | LARGE(A1:A2~B4,2)
          SUM(LARGE(A1~B4,2),MIN(A1~B4))             | SUM(LARGE(A1~B4,2),MIN(A1,B4))
          SUM(A1~B4*2)                               | SUM(A1~B4*2)
          A1&"SUM(A1~B4)"                            | A1&"SUM(A1~B4)"
          'SUM(A1~B4)'!C1                            | 'SUM(A1~B4)'!C1
          """)
  void putsCommasIntoUnionsWhereNothingElseChanges(String written, String expected) {
    assertThat(FormulaText.uniform(written)).isEqualTo(expected);
  }

  @Test
  void takesLongUnionsWithoutRecursion() {
    String more = "~'a'!A1".repeat(100_000);
    assertThat(FormulaText.uniform("SUM(A1" + more + ")"))
        .isEqualTo("SUM(A1" + more.replace('~', ',') + ")");
    assertThat(FormulaText.uniform("SUM(A1" + more + "+")).isEqualTo("SUM(A1" + more + "+");
  }

  @Test
  void takesLongTextsWithoutRecursion() {
    String text = "\"" + "a\"\"".repeat(100_000) + "\"";
    assertThat(FormulaText.uniform(text + "&lab_total(A1)")).isEqualTo(text + "&LAB_TOTAL(A1)");
  }
}
