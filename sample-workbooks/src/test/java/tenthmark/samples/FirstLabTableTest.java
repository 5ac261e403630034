package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.report.FileChecker;

class FirstLabTableTest {

  private static final Path WORKBOOKS = Saved.WORKBOOKS;

  @Nested
  class TheFilesOnDisk {

    @ParameterizedTest
    @ValueSource(strings = {".ods", ".xlsx"})
    void holdWhatTheCodeWrites(String ending, @TempDir Path folder) throws Exception {
      assertThat(Saved.inputs(WORKBOOKS.resolve("first-lab-table" + ending)))
          .isEqualTo(Saved.inputs(BenchWorkbook.build(), folder));
      assertThat(Saved.inputs(WORKBOOKS.resolve("first-lab-table-faulty" + ending)))
          .isEqualTo(Saved.inputs(BenchWorkbook.buildFaulty(), folder));
    }
  }

  @Nested
  class TheChecker {

    private final FileChecker checker = FileChecker.load();

    @ParameterizedTest
    @ValueSource(strings = {"first-lab-table.ods", "first-lab-table.xlsx"})
    void findsNothingInTheCorrectTable(String file) {
      assertThat(found(file)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-lab-table-faulty.ods", "first-lab-table-faulty.xlsx"})
    void findsEveryPlantedFaultAndNothingElse(String file) {
      assertThat(found(file))
          .containsExactlyInAnyOrder(
              "H5 length-one-end",
              "M7 uncertainty-missing",
              "M9 total-differs",
              "M9 typed-over",
              "H11 display-reading",
              "H13 reading-differs",
              "A14 rationale-missing",
              "K15 reaction-missing",
              "D11 unit-missing",
              "N17 digits-unmatched",
              "N17 typed-over");
    }

    @Test
    void hasOneFindingOrMoreInTheRecordOfEachFault() {
      List<Integer> rows =
          found("first-lab-table-faulty.ods").stream()
              .map(finding -> record(finding.substring(1, finding.indexOf(' '))))
              .toList();
      assertThat(PlantedFault.all())
          .allSatisfy(fault -> assertThat(rows).contains(record(fault.cell().substring(1))));
    }

    /** The row of the record that a row belongs to: its rationale stands in the next one. */
    private static int record(String row) {
      int number = Integer.parseInt(row);
      return number % 2 == 0 ? number - 1 : number;
    }

    private List<String> found(String file) {
      return Saved.findings(checker, WORKBOOKS.resolve(file));
    }
  }
}
