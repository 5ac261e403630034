package tenthmark.samples.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Drawings show a value to the place of its uncertainty, and of that one digit, or two if the first
 * is 1 (common practice, no source).
 */
class ShownDigitsTest {

  static Stream<Drawing> drawings() {
    return Family.ofSet("open").stream().flatMap(family -> family.drawings().stream());
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void areThoseThatTheUncertaintyAllows(Drawing drawing) throws Exception {
    Map<String, Object> contents = CorpusFile.contents(file(drawing));
    try (Workbook workbook = drawing.finished()) {
      for (Stated record : drawing.records()) {
        String value = CorpusFile.place(record.sheet(), record.value());
        if (record.uncertainty().orElse(null) instanceof String cell
            && contents.get(value) instanceof Double) {
          String uncertainty = CorpusFile.place(record.sheet(), cell);
          int places = places(workbook, uncertainty);

          assertThat(places(workbook, value)).as(value).isEqualTo(places);
          assertThat(digits((Double) contents.get(uncertainty), places))
              .as(uncertainty)
              .matches("[1-9]|1[0-9]");
        }
      }
    }
  }

  private static Path file(Drawing drawing) {
    return Stream.of("xlsx", "xls", "ods")
        .map(format -> CorpusFile.FOLDER.resolve(drawing.name() + "." + format))
        .filter(Files::exists)
        .findFirst()
        .orElseThrow();
  }

  /** Significant digits as shown, without zeros before the point that only hold places. */
  private static String digits(double uncertainty, int places) {
    BigDecimal shown = BigDecimal.valueOf(uncertainty).setScale(places, RoundingMode.HALF_UP);
    BigDecimal plain = places == 0 ? shown.stripTrailingZeros() : shown;
    return plain.unscaledValue().toString();
  }

  private static int places(Workbook workbook, String place) {
    int mark = place.indexOf('!');
    CellReference cell = new CellReference(place.substring(mark + 1));
    Row row = workbook.getSheet(place.substring(0, mark)).getRow(cell.getRow());
    CellStyle style = row.getCell(cell.getCol()).getCellStyle();
    List<String> parts = List.of(style.getDataFormatString().split("\\.", -1));
    return parts.size() == 2 ? parts.get(1).length() : 0;
  }
}
