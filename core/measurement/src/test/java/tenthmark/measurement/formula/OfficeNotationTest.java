package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** As OASIS OpenDocument 1.3, part 4, 5.13 writes arrays, which is what the office hands over. */
class OfficeNotationTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      quoteCharacter = '`',
      value = {
        "=SUM(A1;B1) ! =SUM(A1;B1)",
        "=SUM({1;2|3;4};B1) ! =SUM({1,2;3,4};B1)",
        "{=SUM(A1:A2*{3|4};B1)} ! {=SUM(A1:A2*{3;4};B1)}",
        "{=SUM(A1;B1)} ! {=SUM(A1;B1)}",
        "=COUNTIF({\"a;|\";\"b\"};\"{;\") ! =COUNTIF({\"a;|\",\"b\"};\"{;\")",
        "=SUM($'a{b'.A1;{1;2}) ! =SUM($'a{b'.A1;{1,2})"
      })
  void arraysAreWrittenAsInFiles(String office, String file) {
    assertThat(OfficeNotation.asInFiles(office)).isEqualTo(file);
  }
}
