package tenthmark.samples.corpus.mistaken;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.samples.corpus.Writer;

/** Each twin differs from its correct workbook in the cells named, and nothing else was written. */
class TwinsTest {

  static Stream<Twin> twins() {
    return Twins.all().stream();
  }

  @Test
  void areManyWithNamesOfTheirOwn() {
    assertThat(twins().map(Twin::name)).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(20);
  }

  @ParameterizedTest
  @MethodSource("twins")
  void haveThreeToFiveMistakesInCellsOfTheirOwn(Twin twin) {
    assertThat(twin.mistakes()).hasSizeBetween(3, 5);
    assertThat(twin.mistakes().stream().map(each -> each.sheet() + each.cell()))
        .doesNotHaveDuplicates();
    assertThat(twin.mistakes()).allSatisfy(each -> assertThat(each.sentence()).isNotBlank());
  }

  /** A sentence that has become false through another mistake stays as it was. */
  @ParameterizedTest
  @MethodSource("twins")
  void changeTheCellsNamed(Twin twin) {
    Workbook correct = twin.correct().workbook();
    Workbook mistaken = twin.mistaken().workbook();
    for (Mistake mistake : twin.mistakes()) {
      if (!mistake.kind().equals("false-agreement")) {
        assertThat(content(mistaken, mistake))
            .as("%s %s", twin.name(), mistake)
            .isNotEqualTo(content(correct, mistake));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("twins")
  void areWhatTheFolderHolds(Twin twin) throws IOException {
    Path truth = Path.of("corpus-mistaken", twin.name() + ".mistakes.yaml");
    Writer writer = twin.correct().writer();

    assertThat(Files.readString(truth)).isEqualTo(twin.text());
    assertThat(truth.resolveSibling(twin.name() + "." + writer.format())).exists();
  }

  private static String content(Workbook workbook, Mistake mistake) {
    CellReference place = new CellReference(mistake.cell());
    Cell cell = workbook.getSheet(mistake.sheet()).getRow(place.getRow()).getCell(place.getCol());
    return cell + " " + cell.getCellStyle().getDataFormatString();
  }
}
