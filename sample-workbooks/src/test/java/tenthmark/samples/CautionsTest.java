package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.output.ReportFolder;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.WorkbookFile;

/** Whatever a student or an instructor reads says what the numbers are not for. */
class CautionsTest {

  static Stream<Path> pages() {
    return Stream.concat(
        Stream.of(Path.of("README.md"), Path.of("corpus/README.md"), Path.of("../README.md")),
        Stream.concat(files(Path.of("guides"), ".md"), files(Saved.WORKBOOKS, ".md")));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void standOnEveryPage(Path page) throws IOException {
    assertCautious(Files.readString(page));
  }

  static Stream<Path> workbooks() {
    return Stream.of(".ods", ".xlsx", ".ots", ".xltx")
        .flatMap(ending -> files(Saved.WORKBOOKS, ending));
  }

  @ParameterizedTest
  @MethodSource("workbooks")
  void standInEveryWorkbook(Path workbook) throws Exception {
    assertThat(
            WorkbookFile.read(workbook).sheets().stream()
                .flatMap(sheet -> sheet.cells())
                .map(cell -> cell.content())
                .filter(Content.Text.class::isInstance)
                .map(content -> ((Content.Text) content).text()))
        .anySatisfy(CautionsTest::assertCautious);
  }

  @Test
  void standOnTheStudentsPageAndOnTheClassPage(@TempDir Path folder) throws Exception {
    Path workbook = Saved.WORKBOOKS.resolve("first-lab-table-faulty.ods");
    FileChecker checker = FileChecker.load();
    FileReport report = checker.check(workbook);
    ReportFolder reports =
        new ReportFolder(folder, List.of(workbook), checker, CheckerTexts.english());
    reports.write(report);
    reports.writeClass(List.of(report));

    assertThat(files(folder, ".html"))
        .hasSize(2)
        .allSatisfy(page -> assertCautious(Files.readString(page)));
  }

  private static void assertCautious(String text) {
    assertThat(text.replace("&#x27;", "'").replaceAll("\\s+", " "))
        .contains(
            "not for calibration, safety or legal decisions",
            "maker's manual",
            "lab's safety rules");
  }

  private static Stream<Path> files(Path folder, String ending) {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> found = files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
      assertThat(found).as("files %s in %s", ending, folder).isNotEmpty();
      return found.stream();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
