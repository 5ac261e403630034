package tenthmark.samples.corpus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;

/** A real Calc computes the workbooks of the corpus to the values that other programs stored. */
@TestInstance(Lifecycle.PER_CLASS)
class CorpusIT {

  private static final double RELATIVE = 1e-9;

  private Office office;

  @BeforeAll
  void start() throws Exception {
    office = Office.start(Profile.withExtension());
  }

  @AfterAll
  void stop() throws Exception {
    office.close();
  }

  static List<CorpusFile> files() {
    return CorpusFile.all();
  }

  @ParameterizedTest
  @MethodSource("files")
  void hasInCalcTheNumbersThatItStores(CorpusFile file) throws Exception {
    Map<String, Object> stored = file.contents();
    Map<String, Object> computed = CorpusFile.contents(recalculated(file.workbook()));
    stored.forEach(
        (cell, content) -> {
          if (content instanceof Double number) {
            assertThat((Double) computed.get(cell))
                .as(cell)
                .isCloseTo(number, within(RELATIVE * Math.abs(number) + Double.MIN_NORMAL));
          }
        });
  }

  private Path recalculated(Path file) throws Exception {
    try (Workbook workbook = office.open(file)) {
      return workbook.recalculateHard().save("recalculated", Workbook.Format.ODS);
    }
  }
}
