package tenthmark.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.course.Origin;
import tenthmark.checker.course.Specification;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.recording.DisplaySpecification;
import tenthmark.measurement.recording.Spacing;

/** Students and numbers are invented. */
class ProfileStartTest {

  private static final Catalogue FUNCTIONS = Catalogue.load();
  private static final RuleCatalogue RULES = RuleCatalogue.load();

  private static final Grid WORKSHOP =
      Grid.sheet("Records")
          .row(
              "Quantity",
              "Symbol",
              "Value",
              "Unit",
              "Division",
              "Spacing",
              "Ends",
              "Reading",
              "Physical",
              "Instrument",
              "Timing",
              "Uncertainty",
              "Rationale")
          .row(
              "Crank arm",
              "L",
              172.5,
              "mm",
              1,
              "fine",
              2,
              0.5,
              "=LAB_FUZZY(0.2)",
              null,
              null,
              "=LAB_TOTAL(H2:K2)",
              "Fine marks, two ends, one edge soft.")
          .row(
              "Foam grip",
              "g",
              128,
              "mm",
              1,
              "fine",
              2,
              0.5,
              null,
              null,
              null,
              0.5,
              "Fine marks, two ends judged.")
          .row(
              "Tyre pressure",
              "p",
              4.15,
              "bar",
              null,
              null,
              null,
              null,
              null,
              "=LAB_DISPLAY(0.01,C4,1,2)",
              null,
              "=LAB_TOTAL(H4:K4)",
              "As the maker says.")
          .row(
              "Wheel, ten turns",
              "t",
              8.43,
              "s",
              null,
              null,
              null,
              null,
              null,
              "=LAB_DISPLAY(0.01)",
              "=LAB_HANDTIMED()",
              "=LAB_TOTAL(H5:K5)",
              "Timed by hand.")
          .row(
              "Ratio: \"grip\" # 1\nof two",
              "r",
              "=C3/C2",
              "1",
              null,
              null,
              null,
              null,
              null,
              null,
              null,
              0.01,
              "Carried from both.")
          .row(
              "Lever feel",
              null,
              3,
              "hands",
              null,
              null,
              null,
              null,
              null,
              null,
              null,
              1,
              "Nobody knows that unit.");

  private static String start(Workbook workbook) {
    return ProfileStart.write(
        "first lab: \n# evil.xlsx", Inspection.of(workbook, FUNCTIONS, Course.PLAIN).records());
  }

  private static Profile read(String yaml) {
    ProfileText text = new ProfileReader(RULES.ids()).read(yaml);
    assertThat(text).isInstanceOf(ProfileText.Usable.class);
    return ((ProfileText.Usable) text).profile();
  }

  private final Course course = read(start(WORKSHOP.workbook())).course();

  @Test
  void listsTheQuantitiesWithTheirUnits() {
    assertThat(course.quantities())
        .extracting(
            ExpectedQuantity::name, quantity -> quantity.unit().text(), ExpectedQuantity::origin)
        .containsExactly(
            tuple("Crank arm", "mm", Origin.MEASURED),
            tuple("Foam grip", "mm", Origin.MEASURED),
            tuple("Tyre pressure", "bar", Origin.MEASURED),
            tuple("Wheel, ten turns", "s", Origin.MEASURED),
            tuple("Ratio: \"grip\" # 1 of two", "1", Origin.CALCULATED),
            tuple("Lever feel", "1", Origin.MEASURED));
    assertThat(course.quantities().get(0).symbol()).contains("L");
    assertThat(course.quantities()).extracting(ExpectedQuantity::physical).startsWith(true, false);
  }

  @Test
  void listsEachDivisionOnceAsAnApparatus() {
    assertThat(course.apparatus())
        .extracting(Apparatus::name)
        .containsExactly("scale in 1 mm, fine", "display in 0.01 bar", "stopwatch in 0.01 s");
    assertThat(course.apparatus().get(0).spacing()).contains(Spacing.FINE);
    assertThat(course.apparatus().get(1).specification())
        .contains(new Specification.OfDisplay(new DisplaySpecification(0.01, 1, 2)));
    assertThat(course.apparatus().get(2).kind()).isEqualTo(ApparatusKind.STOPWATCH);
    assertThat(course.quantities().get(1).apparatus()).contains("scale in 1 mm, fine");
  }

  @Test
  void neverTakesAStudentsValueAsAccepted() {
    assertThat(course.quantities()).allMatch(quantity -> quantity.accepted().isEmpty());
    assertThat(start(WORKSHOP.workbook())).doesNotContain("172.5");
  }

  @Test
  void findsNothingFurtherInTheWorkbookItself() {
    Workbook workbook = WORKSHOP.workbook();

    List<String> before = findings(workbook, Course.PLAIN);
    List<String> after = findings(workbook, course);

    assertThat(after)
        .containsExactlyInAnyOrderElementsOf(
            Stream.concat(before.stream(), Stream.of("D7 unit-unknown")).toList());
  }

  private static List<String> findings(Workbook workbook, Course course) {
    return RULES.check(Inspection.of(workbook, FUNCTIONS, course)).stream()
        .map(finding -> finding.cell().place() + " " + finding.rule().id())
        .toList();
  }

  @Test
  void isWhatTheSchemaAllows() {
    assertThat(new ProfileSchemaTest().allows(start(WORKSHOP.workbook()))).isTrue();
  }

  /** Every line that a comment offers can be used as it stands. */
  @Test
  void offersKeysThatAreRead() {
    String yaml = start(WORKSHOP.workbook());
    String used =
        yaml.lines()
            .filter(line -> !line.equals("convention: bench"))
            .map(line -> line.replaceFirst("^(\\s*)# (?=\\s*[a-z-]+:( |$)(?!.*\\.$))", "$1"))
            .reduce("", (text, line) -> text + line + "\n");

    Course all = read(used).course();

    assertThat(all.name()).isEqualTo("Bicycle workshop physics");
    assertThat(all.convention().name()).isEqualTo("our bench");
    assertThat(all.quantities()).allMatch(quantity -> quantity.accepted().isPresent());
    assertThat(all.apparatus()).allMatch(item -> item.specification().isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"good.xlsx", "good.ods", "native-formulas.xls", "native-formulas.ods"})
  void isReadAgainWhateverTheWorkbook(String name) throws Exception {
    Workbook workbook = WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name));

    assertThat(read(start(workbook))).isNotNull();
  }

  @Test
  void isEmptyButUsableForAWorkbookWithoutRecords() {
    assertThat(read(start(Grid.sheet("Notes").row("Rain all day").workbook())).course())
        .isEqualTo(Course.PLAIN);
  }
}
