package tenthmark.checker.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;

/** A workbook in which one mistake was filled down a long column. */
class ExcerptTest {

  private static final int ROWS = 250;
  private static final String REST = "and 150 more findings of the same kind (unit-missing)";

  @TempDir Path folder;

  private FileReport report;

  /** As many faults of one rule as rows, as if each were another one. */
  @BeforeEach
  void check() {
    Grid table = Grid.sheet("Spokes").row("Quantity", "Value", "Unit", "Uncertainty", "Rationale");
    for (int row = 0; row < ROWS; row++) {
      table.row("Spoke " + row, 264.5, null, 0.5, "Fine marks, both ends judged by eye.");
    }
    FileReport checked = FileChecker.load().check(table.xlsx(folder.resolve("ada.xlsx")));
    report =
        FileReport.checked(
            checked.file(),
            checked.contents(),
            checked.findings().stream().flatMap(Finding::apart).toList());
  }

  @Test
  void endsAfterAHundredOfOneRuleAndSaysHowManyMoreThereAre() {
    List<String> lines = new TextReport(CheckerTexts.english()).lines(report);

    assertThat(lines).hasSize(101);
    assertThat(lines.get(99)).contains("Spokes.C101: error unit-missing");
    assertThat(lines.get(100)).endsWith("ada.xlsx: " + REST);
  }

  @Test
  void isWhatThePageAndTheCopyShow() throws Exception {
    Path out = folder.resolve("out");
    new ReportFolder(out, List.of(report.file()), FileChecker.load(), CheckerTexts.english())
        .write(report);

    assertThat(out.resolve("workbooks/ada.xlsx/feedback.html"))
        .content()
        .contains("C101: error unit-missing", REST)
        .doesNotContain("C102: error");
    try (XSSFWorkbook copy =
        new XSSFWorkbook(Files.newInputStream(out.resolve("workbooks/ada.xlsx/ada.xlsx")))) {
      Sheet findings = copy.getSheetAt(0);
      assertThat(findings.getRow(findings.getLastRowNum()).getCell(3).getStringCellValue())
          .isEqualTo(REST);
      assertThat(copy.getSheet("Spokes").getCellComments()).hasSize(100);
    }
  }

  @Test
  void hidesNothingFromCountsAndFromPrograms() throws Exception {
    assertThat(report.count(Severity.ERROR)).isEqualTo(ROWS);
    assertThat(
            new ObjectMapper()
                .readTree(JsonReport.write(List.of(report), CheckerTexts.english()))
                .at("/files/0/findings"))
        .hasSize(ROWS);
  }

  @Test
  void isEverythingWhereNoRuleHasThatMany() {
    FileReport few =
        FileReport.checked(report.file(), Contents.NONE, report.findings().subList(0, 100));

    assertThat(few.excerpt().findings()).isEqualTo(few.findings());
    assertThat(few.excerpt().rest()).isEmpty();
  }
}
