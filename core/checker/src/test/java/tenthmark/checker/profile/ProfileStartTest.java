package tenthmark.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.Course;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.course.Origin;
import tenthmark.checker.course.Specification;
import tenthmark.checker.record.Field;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
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
        "first lab: \n# evil.xlsx", Inspection.of(workbook, FUNCTIONS, Course.PLAIN));
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
            tuple("Ratio: \"grip\" # 1 of two", "1", Origin.CALCULATED));
    assertThat(course.quantities().get(0).symbol()).contains("L");
    assertThat(course.quantities()).extracting(ExpectedQuantity::physical).startsWith(true, false);
  }

  /** Of two quantities that differ in brackets alone, each is found by its own name. */
  @Test
  void findsNamesThatEndInBracketsAgain() {
    Workbook workbook =
        Grid.sheet("Records")
            .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Density (chain oil)", "d", 0.87, "g/cm3", 0.01, "As the can says; it is full.")
            .row("Density (grease)", "e", 0.93, "g/cm3", 0.01, "As the tube says; it is full.")
            .workbook();
    Course liquids = read(start(workbook)).course();

    Inspection inspection = Inspection.of(workbook, FUNCTIONS, liquids);

    assertThat(inspection.expectations().missing()).isEmpty();
    assertThat(inspection.expectations().records())
        .extracting(
            found -> found.quantity().name(), found -> found.measurement().text(Field.QUANTITY))
        .containsExactly(
            tuple("Density (chain oil)", Optional.of("Density (chain oil)")),
            tuple("Density (grease)", Optional.of("Density (grease)")));
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

  /** 0.5 is a quarter of a division at each of two ends, 0.1 a tenth at one. */
  @Test
  void tellsTheSpacingOfAScaleFromItsReadings() {
    Grid scales =
        Grid.sheet("Records")
            .row("Quantity", "Value", "Unit", "Division", "Reading", "Uncertainty", "Rationale")
            .row("Crank arm", 172.5, "mm", 1, 0.5, 0.5, "Two ends judged.")
            .row("Level of the bath", 12.3, "cm", 1, 0.1, 0.1, "One end judged.");

    assertThat(read(start(scales.workbook())).course().apparatus())
        .extracting(Apparatus::spacing)
        .containsExactly(Optional.of(Spacing.FINE), Optional.of(Spacing.WIDE));
  }

  /** As in a table for records of any kind. */
  @Test
  void takesNoMassForATimeAndNoExpressionForAFigureOfTheMaker() {
    Grid scales =
        Grid.sheet("Records")
            .row("Quantity", "Value", "Unit", "Counts", "Instrument", "Timing", "Uncertainty")
            .row(
                "Crank, mass",
                214.6,
                "g",
                2,
                "=LAB_DISPLAY(0.1,B2,0.1,IF(D2=\"\",1,D2))",
                "=IF(C2=\"s\",LAB_HANDTIMED(),\"\")",
                "=LAB_TOTAL(E2:F2)");

    assertThat(read(start(scales.workbook())).course().apparatus())
        .singleElement()
        .satisfies(
            display -> {
              assertThat(display.kind()).isEqualTo(ApparatusKind.DISPLAY);
              assertThat(display.specification()).isEmpty();
            });
  }

  @Test
  void leavesOutAQuantityWhoseUnitIsNotKnownAndSaysSo() {
    assertThat(course.quantities()).extracting(ExpectedQuantity::name).doesNotContain("Lever feel");
    assertThat(start(WORKSHOP.workbook()))
        .contains("  # Left out, for the unit is not known: Lever feel in hands\n");
  }

  @Test
  void expectsNoUnitWhereNoneStands() {
    Grid grid =
        Grid.sheet("Bench")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row("Spoke length", 264.5, "mm", 0.5, "Fine marks, both ends judged by eye.")
            .row("Rim width", 19.5, null, 0.5, "Fine marks, both ends judged by eye.")
            .row("Number of teeth", 24, null, 0, "Counted.");

    String profile = start(grid.workbook());

    assertThat(profile)
        .contains("name: Spoke length")
        .contains("# Left out, for the unit is not known: Rim width, with which no unit stands")
        .doesNotContain("name: Rim width");
    assertThat(profile.substring(profile.indexOf("name: Number of teeth"))).contains("unit: '1'");
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

    assertThat(after).containsExactlyInAnyOrderElementsOf(before);
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
            .map(
                line ->
                    line.replaceFirst(
                        "^(\\s*)# (?=\\s*(?:- )?(?:[a-z-]+|[A-Z]+):( |$)(?!.*\\.$))", "$1"))
            .reduce("", (text, line) -> text + line + "\n");

    Course all = read(used).course();

    assertThat(all.name()).isEqualTo("Bicycle workshop physics");
    assertThat(all.convention().name()).isEqualTo("our bench");
    assertThat(all.quantities()).allMatch(quantity -> quantity.accepted().isPresent());
    assertThat(all.apparatus()).allMatch(item -> item.specification().isPresent());
    assertThat(all.tables()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"good.xlsx", "good.ods", "native-formulas.xls", "native-formulas.ods"})
  void isReadAgainWhateverTheWorkbook(String name) throws Exception {
    Workbook workbook = WorkbookFile.read(Path.of("src/test/resources/saved-by-calc", name));

    assertThat(read(start(workbook))).isNotNull();
  }

  @Nested
  class TheConvention {

    private static final Object[] HEADINGS = {
      "Quantity",
      "Value",
      "Unit",
      "Division",
      "Spacing",
      "Ends",
      "Reading",
      "Physical",
      "Uncertainty",
      "Rationale"
    };

    private static Object[] arm(Object reading, Object physical, Object total) {
      return new Object[] {
        "Crank arm", 172.5, "mm", 1, "fine", 2, reading, physical, total, "Fine marks, two ends."
      };
    }

    private static Object[] spoke(Object reading, Object physical, Object total) {
      return new Object[] {
        "Spoke", 262.5, "mm", 1, "fine", 2, reading, physical, total, "Fine marks, two ends."
      };
    }

    private Convention of(Grid grid) {
      Workbook workbook = grid.workbook();
      Profile profile = read(start(workbook));
      assertThat(findings(workbook, profile.course())).as("a check of that very sheet").isEmpty();
      return profile.course().convention();
    }

    @Test
    void isBenchWhereNothingShowsAnother() {
      assertThat(of(Grid.sheet("Bench").row(HEADINGS).row(arm(0.5, 0.3, 0.8))))
          .isEqualTo(Convention.BENCH);
      assertThat(of(Grid.sheet("Bench").row("Quantity", "Value", "Unit")))
          .isEqualTo(Convention.BENCH);
    }

    /** 0.5 and 0.3 make 0.58, 0.5 and 0.4 make 0.64 as the root of the sum of their squares. */
    @Test
    void combinesInQuadratureWhereTheTotalsDo() {
      Convention convention =
          of(
              Grid.sheet("Bench")
                  .row(HEADINGS)
                  .row(arm(0.5, 0.3, 0.58))
                  .row(spoke(0.5, 0.4, "=SQRT(G3^2+H3^2)")));

      assertThat(convention.combine()).isEqualTo(Combine.QUADRATURE);
      assertThat(convention.name()).startsWith("as in ");
    }

    /** Of a sum of two lengths that are uncertain by 0.8 and 0.9 by 1.2 in quadrature. */
    @Test
    void combinesInQuadratureWhereACarriedUncertaintyDoes() {
      Grid grid =
          Grid.sheet("Bench")
              .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Crank arm", "L", 172.5, "mm", 0.8, "Fine marks, two ends.")
              .row("Spoke", "s", 262.5, "mm", 0.9, "Fine marks, two ends.")
              .row("Reach", "r", "=C2+C3", "mm", 1.2, "Carried from both.");

      assertThat(of(grid).combine()).isEqualTo(Combine.QUADRATURE);
    }

    @Test
    void judgesThePartOfADivisionThatTheReadingsShow() {
      Convention convention =
          of(Grid.sheet("Bench").row(HEADINGS).row(arm(0.8, 0.3, 1.1)).row(spoke(0.8, 0.4, 1.2)));

      assertThat(convention.fineFraction()).isEqualTo(0.4);
      assertThat(convention.wideFraction()).isEqualTo(Convention.BENCH.wideFraction());
    }

    @Test
    void isBenchWhereTheReadingsDisagree() {
      Workbook workbook =
          Grid.sheet("Bench")
              .row(HEADINGS)
              .row(arm(0.8, 0.3, 1.1))
              .row(spoke(0.6, 0.4, 1))
              .workbook();

      assertThat(read(start(workbook)).course().convention()).isEqualTo(Convention.BENCH);
    }

    /** 0.3 s over ten turns. */
    @Test
    void hasTheReactionTimeThatTheTimingsShow() {
      Convention convention =
          of(
              Grid.sheet("Bench")
                  .row("Quantity", "Value", "Unit", "Cycles", "Timing", "Uncertainty", "Rationale")
                  .row("Wheel, one turn", 0.84, "s", 10, 0.03, 0.03, "Timed by hand."));

      assertThat(convention.reactionSeconds()).isEqualTo(0.3);
    }
  }

  @Nested
  class Tables {

    private static Grid bench() {
      return Grid.sheet("Bench 1")
          .row("Ada")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
          .row("Spoke", 262.5, "mm", 0.5, "Fine marks, two ends.");
    }

    @Test
    void standInCommentsWhereEveryNumberWasRead() {
      assertThat(start(bench().workbook()))
          .contains(
              """
              # tables:
              #   - sheet: Bench 1
              #     range: A3:E4
              #     direction: down
              #     roles:
              #       A: quantity  # Quantity
              #       B: value  # Value
              #       C: unit  # Unit
              #       D: uncertainty  # Uncertainty
              """);
    }

    @Test
    void areReadyToBeCorrectedWhereANumberWasNotReadWithTheReason() {
      String yaml = start(bench().row().row(null, 7.25).workbook());

      assertThat(read(yaml).course().tables())
          .singleElement()
          .satisfies(
              guide -> {
                assertThat(guide.range().place()).isEqualTo("A3:E4");
                assertThat(guide.across()).isFalse();
                assertThat(guide.fields())
                    .containsEntry(1, Field.VALUE)
                    .containsEntry(3, Field.UNCERTAINTY);
              });
      assertThat(yaml)
          .endsWith(
              "# Not read on the sheet Bench 1: B6 (nothing on the sheet says what this number"
                  + " is).\n");
    }

    @Test
    void ofWhichNothingWasReadAreOfferedToBeFilledIn() {
      assertThat(
              start(
                  Grid.sheet("Banco")
                      .row("Ada")
                      .row("Qwert", "Asdfg")
                      .row(172.5, 0.5)
                      .row(262.5, 0.5)
                      .workbook()))
          .contains(
              """
              # tables:
              #   - sheet: Banco
              #     range: A3:B4
              #     roles:
              #       A: fill in  # Qwert
              #       B: fill in  # Asdfg
              """);
    }

    @Test
    void areToldByRowsWhereRecordsStandSideBySide() {
      String yaml =
          start(
              Grid.sheet("Bench")
                  .row("Quantity", "Crank arm", "Spoke")
                  .row("Value", 172.5, 262.5)
                  .row("Unit", "mm", "mm")
                  .row("Uncertainty", 0.5, 0.6)
                  .row("Rationale", "Fine marks, two ends.", "Fine marks, two ends.")
                  .row()
                  .row(7.25)
                  .workbook());

      assertThat(read(yaml).course().tables())
          .singleElement()
          .satisfies(
              guide -> {
                assertThat(guide.across()).isTrue();
                assertThat(guide.range().place()).startsWith("B1:C");
                assertThat(guide.fields())
                    .containsEntry(0, Field.QUANTITY)
                    .containsEntry(1, Field.VALUE)
                    .containsEntry(3, Field.UNCERTAINTY);
              });
    }
  }

  @Test
  void isEmptyButUsableForAWorkbookWithoutRecords() {
    assertThat(read(start(Grid.sheet("Notes").row("Rain all day").workbook())).course())
        .isEqualTo(Course.PLAIN);
  }
}
