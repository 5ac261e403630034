package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.profile.Profile;
import tenthmark.checker.profile.ProfileReader;
import tenthmark.checker.profile.ProfileText;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
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
      assertThat(findings(lab, copy, ending)).isNotEmpty().allMatch("A1 quantity-missing"::equals);
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

    private static final Pattern FORMULA = Pattern.compile("`=");
    private static final Pattern EXAMPLE =
        Pattern.compile("\\| `=(?<formula>[^`]+)` \\| (?<result>[^|]+) \\|");
    private static final int FREE_COLUMN = 51;
    private static final int FREE_ROW = 100;

    static List<Lab> labs() {
      return Lab.all();
    }

    private record Example(String formula, String result) {}

    @ParameterizedTest
    @MethodSource("labs")
    void giveFormulasWithTheResultsThatTheyHaveInTheCompletedCopy(Lab lab, @TempDir Path folder)
        throws Exception {
      List<Example> examples = examples(lab.instructions());
      XSSFWorkbook workbook = lab.plan().written(Copy.COMPLETED);
      Sheet sheet = workbook.getSheetAt(0);
      for (int i = 0; i < examples.size(); i++) {
        sheet
            .createRow(FREE_ROW + i)
            .createCell(FREE_COLUMN)
            .setCellFormula(examples.get(i).formula());
      }
      Evaluation evaluation = Evaluation.of(Saved.read(workbook, folder), Catalogue.load());
      for (int i = 0; i < examples.size(); i++) {
        Outcome outcome =
            evaluation.at(new CellAddress(sheet.getSheetName(), FREE_COLUMN, FREE_ROW + i));
        assertThat(outcome).as(examples.get(i).formula()).isInstanceOf(Outcome.Known.class);
        assertThat(shown(((Outcome.Known) outcome).value(), examples.get(i).result()))
            .as(examples.get(i).formula())
            .isEqualTo(examples.get(i).result());
      }
    }

    @ParameterizedTest
    @MethodSource("labs")
    void saySafetyFirst(Lab lab) {
      assertThat(lab.instructions())
          .contains("safety rules", "maker's manual", "not for calibration, safety or legal");
    }

    /** A number to as many digits as the page shows. */
    private static String shown(Value value, String like) {
      if (value instanceof Value.Numeric number) {
        int digits = new BigDecimal(like).precision();
        BigDecimal rounded =
            BigDecimal.valueOf(number.number()).round(new MathContext(digits)).stripTrailingZeros();
        return rounded.toPlainString();
      }
      return ((Value.Text) value).text();
    }

    /** Every formula on the page must be one with a result. */
    private static List<Example> examples(String page) {
      List<Example> examples = new ArrayList<>();
      for (MatchResult match : EXAMPLE.matcher(page).results().toList()) {
        examples.add(
            new Example(
                match.group(1).replace(';', ',').replaceAll("\\b([A-Z][a-z]+)\\.([A-Z])", "$1!$2"),
                match.group(2)));
      }
      assertThat(examples)
          .hasSizeGreaterThan(4)
          .hasSize((int) FORMULA.matcher(page).results().count());
      return examples;
    }
  }
}
