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
    assertThat(FormulaText.withDisplayNames(written)).isEqualTo(expected);
  }

  @Test
  void takesLongTextsWithoutRecursion() {
    String text = "\"" + "a\"\"".repeat(100_000) + "\"";
    assertThat(FormulaText.withDisplayNames(text + "&lab_total(A1)"))
        .isEqualTo(text + "&LAB_TOTAL(A1)");
  }
}
