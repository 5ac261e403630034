package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileStart;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.samples.lab.Lab;
import tenthmark.samples.plan.Copy;

class LabsTest {

  private static final Path LABS = Saved.WORKBOOKS.resolve("labs");

  static List<Lab> labs() {
    return Lab.all();
  }

  static Stream<Arguments> files() {
    return Lab.all().stream()
        .flatMap(
            lab ->
                Stream.of(Copy.values())
                    .flatMap(
                        copy ->
                            Stream.of(".ods", ".xlsx")
                                .map(ending -> Arguments.of(lab, copy, ending))));
  }

  @ParameterizedTest
  @MethodSource("files")
  void filesHoldWhatTheCodeWrites(Lab lab, Copy copy, String ending, @TempDir Path folder)
      throws Exception {
    assertThat(Saved.inputs(LABS.resolve(lab.fileName(copy) + ending)))
        .isEqualTo(Saved.inputs(lab.plan().written(copy), folder));
  }

  @Test
  void thereAreAtLeastSixAndNoFileOfAnother() throws Exception {
    assertThat(Lab.all()).hasSizeGreaterThanOrEqualTo(6);
    try (Stream<Path> files = Files.list(LABS)) {
      assertThat(files).hasSize(Lab.all().size() * 6);
    }
  }

  @Nested
  class ACopyToStartFrom {

    static Stream<Arguments> starts() {
      return files().filter(arguments -> arguments.get()[1] == Copy.START);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void showsNothingWhereNothingIsTypedYet(Lab lab, Copy copy, String ending) throws Exception {
      assertThat(
              WorkbookFile.read(LABS.resolve(lab.fileName(copy) + ending)).sheets().stream()
                  .flatMap(sheet -> sheet.cells())
                  .filter(cell -> cell.content() instanceof Content.Formula))
          .isNotEmpty()
          .allSatisfy(
              cell ->
                  assertThat(Evaluation.stored(cell.content()))
                      .as(cell.address().place())
                      .matches(
                          value ->
                              value.isEmpty()
                                  || value.get().equals(Value.BLANK)
                                  || value.get().equals(Value.of(""))));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void lacksTheQuantitiesAndHasNoOtherFinding(Lab lab, Copy copy, String ending) {
      assertThat(findings(lab, copy, ending))
          .filteredOn(found -> !found.matches("A\\d+ (?:nothing|not)-read"))
          .isNotEmpty()
          .doesNotHaveDuplicates()
          .allMatch(found -> found.matches("A\\d+ quantity-missing"))
          .doesNotContain("A1 quantity-missing");
    }
  }

  @Nested
  class ACompletedCopy {

    static Stream<Arguments> completed() {
      return files().filter(arguments -> arguments.get()[1] == Copy.COMPLETED);
    }

    @ParameterizedTest
    @MethodSource("completed")
    void hasNoFindingUnderTheProfileOfItsLab(Lab lab, Copy copy, String ending) {
      assertThat(findings(lab, copy, ending)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("completed")
    void hasNoFaultUnderTheProfileThatIsStartedFromIt(Lab lab, Copy copy, String ending)
        throws Exception {
      Path file = LABS.resolve(lab.fileName(copy) + ending);
      String started =
          ProfileStart.write(
              file.getFileName().toString(),
              Inspection.of(WorkbookFile.read(file), Catalogue.load(), Course.PLAIN));

      FileReport report = FileChecker.load(profile(started), Limits.DEFAULT).check(file);

      assertThat(report.findings())
          .filteredOn(finding -> finding.rule().severity() != Severity.NOTE)
          .isEmpty();
    }
  }

  private static List<String> findings(Lab lab, Copy copy, String ending) {
    return Saved.findings(
        FileChecker.load(profile(lab.profile()), Limits.DEFAULT),
        LABS.resolve(lab.fileName(copy) + ending));
  }

  static Profile profile(String yaml) {
    ProfileText text = new ProfileReader(RuleCatalogue.load().ids()).read(yaml);
    assertThat(text).isInstanceOf(ProfileText.Usable.class);
    return ((ProfileText.Usable) text).profile();
  }

  @ParameterizedTest
  @MethodSource("labs")
  void textsOnDiskAreThoseOfTheCode(Lab lab) throws Exception {
    assertThat(LABS.resolve(lab.file() + ".md")).hasContent(lab.instructions());
    assertThat(LABS.resolve(lab.file() + ".yaml")).hasContent(lab.profile());
  }

  @Nested
  class Instructions {

    static List<Lab> labs() {
      return Lab.all();
    }

    @ParameterizedTest
    @MethodSource("labs")
    void giveFormulasWithTheResultsThatTheyHaveInTheCompletedCopy(Lab lab, @TempDir Path folder)
        throws Exception {
      List<PageSheet> sheets = PageSheet.of(page(lab), () -> lab.plan().written(Copy.COMPLETED));
      for (PageSheet sheet : sheets) {
        assertThat(sheet.differences(folder)).isEmpty();
      }
    }

    @ParameterizedTest
    @MethodSource("labs")
    void showEveryFormulaWithWhatItGives(Lab lab) {
      assertThat(PageSheet.shown(page(lab)))
          .isGreaterThan(4)
          .isEqualTo(PageSheet.formulas(page(lab)));
    }

    private static MarkdownPage page(Lab lab) {
      return MarkdownPage.of(lab.file(), lab.instructions());
    }

    @ParameterizedTest
    @MethodSource("labs")
    void saySafetyFirst(Lab lab) {
      assertThat(lab.instructions())
          .contains("safety rules", "maker's manual", "not for calibration, safety or legal");
    }
  }
}
