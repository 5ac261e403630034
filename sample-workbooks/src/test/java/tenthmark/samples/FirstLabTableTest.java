package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.formula.CellAddress;

class FirstLabTableTest {

  private static final Path WORKBOOKS = Path.of("workbooks");

  @Nested
  class TheFilesOnDisk {

    @ParameterizedTest
    @ValueSource(strings = {".ods", ".xlsx"})
    void holdWhatTheCodeWrites(String ending, @TempDir Path folder) throws Exception {
      assertThat(inputs(WORKBOOKS.resolve("first-lab-table" + ending)))
          .isEqualTo(inputs(written(BenchWorkbook.build(), folder)));
      assertThat(inputs(WORKBOOKS.resolve("first-lab-table-faulty" + ending)))
          .isEqualTo(inputs(written(BenchWorkbook.buildFaulty(), folder)));
    }

    private static Path written(XSSFWorkbook workbook, Path folder) throws IOException {
      Path file = folder.resolve("written.xlsx");
      try (workbook;
          OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
      return file;
    }

    /** What a user types: everything but the values of formulas. */
    private static Map<CellAddress, Object> inputs(Path file) throws UnreadableFileException {
      return WorkbookFile.read(file).sheets().stream()
          .flatMap(sheet -> sheet.cells())
          .collect(Collectors.toMap(Cell::address, cell -> input(cell.content())));
    }

    private static Object input(Content content) {
      return content instanceof Content.Formula formula ? "=" + formula.text() : content;
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
      FileReport report = checker.check(WORKBOOKS.resolve(file));
      assertThat(report.problem()).isEmpty();
      return report.findings().stream()
          .peek(finding -> assertThat(finding.cell().sheet()).isEqualTo(BenchWorkbook.RECORDS))
          .map(
              finding ->
                  (char) ('A' + finding.cell().column())
                      + Integer.toString(finding.cell().row() + 1)
                      + " "
                      + finding.rule().id())
          .toList();
    }
  }
}
