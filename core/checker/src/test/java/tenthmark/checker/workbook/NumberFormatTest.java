package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.formula.CellAddress;

/** What is seen of a number besides its digits. Format codes after ECMA-376 part 1, 18.8.31. */
class NumberFormatTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0.0\" mm\" | `` | mm | false",
        "\"± \"0.00\" kg\" | ± | kg | false",
        "\\±\\ 0.0\\ \"N·m\" | ± | N·m | false",
        "0.00% | `` | `` | true",
        "0.0\" %\" | `` | % | false",
        "[Red]#,##0.0\" V\";[Blue]-#,##0.0\" V\" | `` | V | false",
        "0.00E+00\" Pa\" | `` | Pa | false",
        "[$€-407] #,##0.00 | € | `` | false",
        "_-0.0\" s\"_- | `` | s | false",
      })
  void isReadOfACode(String code, String before, String after, boolean percent) {
    assertThat(NumberFormat.of(code)).isEqualTo(new NumberFormat(before, after, percent));
  }

  @ParameterizedTest
  @ValueSource(strings = {"General", "0.00", "#,##0", "yyyy\\-mm\\-dd", "h:mm", "@", ""})
  void isPlainWhereDigitsStandAloneOrADateDoes(String code) {
    assertThat(NumberFormat.of(code)).isEqualTo(NumberFormat.PLAIN);
  }

  @ParameterizedTest
  @CsvSource({
    "172.5 mm, false, '', mm, false",
    "± 0.5 mm, false, ±, mm, false",
    "-0.5 mm, false, '', mm, false",
    "'0,05 kg', false, '', kg, false",
    "2.0 %, true, '', '', true"
  })
  void isReadOfWhatAProgramShows(
      String shown, boolean share, String before, String after, boolean percent) {
    assertThat(NumberFormat.seen(shown, share)).isEqualTo(new NumberFormat(before, after, percent));
  }

  @Test
  void isPlainWhereAProgramShowsDigits() {
    assertThat(NumberFormat.seen("172.5", false)).isEqualTo(NumberFormat.PLAIN);
    assertThat(NumberFormat.seen("", false)).isEqualTo(NumberFormat.PLAIN);
    assertThat(NumberFormat.seen("###", false)).isEqualTo(NumberFormat.PLAIN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"bench.xlsx", "bench.xls"})
  void comesFromAFile(String name, @TempDir Path folder) throws Exception {
    Path file = write(folder.resolve(name), "\"± \"0.0\" mm\"");

    assertThat(WorkbookFile.read(file).sheets().get(0).format(new CellAddress("Bench", 1, 0)))
        .isEqualTo(new NumberFormat("±", "mm", false));
  }

  private static Path write(Path file, String code) throws IOException {
    try (var workbook = file.toString().endsWith("x") ? new XSSFWorkbook() : new HSSFWorkbook();
        OutputStream target = Files.newOutputStream(file)) {
      var style = workbook.createCellStyle();
      style.setDataFormat(workbook.createDataFormat().getFormat(code));
      var row = workbook.createSheet("Bench").createRow(0);
      row.createCell(0).setCellValue(172.5);
      var cell = row.createCell(1);
      cell.setCellValue(0.5);
      cell.setCellStyle(style);
      workbook.write(target);
      return file;
    }
  }
}
