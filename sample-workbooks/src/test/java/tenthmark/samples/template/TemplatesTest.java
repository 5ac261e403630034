package tenthmark.samples.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Value;
import tenthmark.samples.Saved;
import tenthmark.samples.plan.Copy;

class TemplatesTest {

  static final Path FOLDER = Saved.WORKBOOKS.resolve("templates");

  static Stream<Arguments> files() {
    return Template.all().stream()
        .flatMap(
            template ->
                Stream.of(
                    Arguments.of(template, Copy.START, ".ots"),
                    Arguments.of(template, Copy.START, ".xltx"),
                    Arguments.of(template, Copy.COMPLETED, ".ods"),
                    Arguments.of(template, Copy.COMPLETED, ".xlsx")));
  }

  static Stream<Arguments> blanks() {
    return files().filter(arguments -> arguments.get()[1] == Copy.START);
  }

  static Path file(Template template, Copy copy, String ending) {
    return FOLDER.resolve(template.fileName(copy) + ending);
  }

  @ParameterizedTest
  @MethodSource("files")
  void holdsWhatTheCodeWrites(Template template, Copy copy, String ending, @TempDir Path folder)
      throws Exception {
    assertThat(Saved.inputs(file(template, copy, ending)))
        .isEqualTo(Saved.inputs(template.plan().written(copy), folder));
  }

  @ParameterizedTest
  @MethodSource("files")
  void givesTheCheckerNothingToFind(Template template, Copy copy, String ending) {
    assertThat(Saved.findings(FileChecker.load(), file(template, copy, ending))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("blanks")
  void showsNothingWhereNothingIsTypedYet(Template template, Copy copy, String ending)
      throws Exception {
    assertThat(
            WorkbookFile.read(file(template, copy, ending)).sheets().stream()
                .flatMap(sheet -> sheet.cells())
                .filter(cell -> cell.content() instanceof Content.Formula))
        .isNotEmpty()
        .allSatisfy(
            cell ->
                assertThat(Evaluation.stored(cell.content()).orElse(Value.BLANK))
                    .as(cell.address().toString())
                    .isIn(Value.BLANK, Value.of("")));
  }

  @Test
  void theFolderHoldsTheThreeAndTheirFilledInCopies() throws Exception {
    assertThat(Template.all()).hasSize(3);
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files).hasSize(12);
    }
  }
}
