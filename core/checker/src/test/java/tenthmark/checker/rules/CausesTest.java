package tenthmark.checker.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Grid.Stored;
import tenthmark.checker.workbook.Workbook;

/** What would not be found without another finding costs nothing and stands beneath it. */
class CausesTest {

  /** One point for each finding of any rule. */
  private static final Grading A_POINT_EACH =
      new Grading(
          RuleCatalogue.load().ids().stream()
              .collect(
                  Collectors.toMap(id -> id, id -> new RulePolicy(true, Optional.empty(), 1))));

  private static List<String> told(Workbook workbook, Grading grading) {
    return Findings.all(workbook, grading).stream().map(CausesTest::told).toList();
  }

  private static List<String> toldInCells(Workbook workbook, Grading grading) {
    return Findings.allInCells(workbook, grading).stream().map(CausesTest::told).toList();
  }

  private static String told(Finding finding) {
    return Findings.brief(finding)
        + finding
            .cause()
            .map(cause -> " <- " + cause.cell().place() + " " + cause.rule())
            .orElse("");
  }

  private static Grading without(String rule) {
    return new Grading(Map.of(rule, new RulePolicy(false, Optional.empty(), 0)));
  }

  private static double points(Workbook workbook) {
    return Findings.all(workbook, A_POINT_EACH).stream().mapToDouble(Finding::points).sum();
  }

  @Nested
  class ANumberAsText {

    private final Workbook workbook =
        Grid.sheet("Data")
            .row("172,5", new Stored("=A1*2", "#VALUE!"))
            .row("", new Stored("=B1+1", "#VALUE!"))
            .workbook();

    @Test
    void standsAboveTheErrorThatItBringsAbout() {
      assertThat(toldInCells(workbook, Grading.DECLARED))
          .containsExactly("A1 number-as-text", "B1 error-cell <- A1 number-as-text");
    }

    @Test
    void hidesNoErrorWhereItIsNotReported() {
      assertThat(toldInCells(workbook, without("number-as-text"))).containsExactly("B1 error-cell");
    }

    @Test
    void explainsNoErrorThatHasAnotherReason() {
      assertThat(
              toldInCells(
                  Grid.sheet("Data").row("172,5", new Stored("=A1/0", "#DIV/0!")).workbook(),
                  Grading.DECLARED))
          .containsExactly("A1 number-as-text", "B1 error-cell");
    }
  }

  @Nested
  class AFileSavedWithoutTheExtension {

    private final Workbook workbook =
        Grid.sheet("Data")
            .row(new Stored("=LAB_READING(1,\"wide\",2)", "#NAME?"))
            .row(new Stored("=A1*2", 5))
            .workbook();

    @Test
    void standsAboveTheResultsThatWereStoredThere() {
      assertThat(toldInCells(workbook, Grading.DECLARED))
          .containsExactly(
              "A1 saved-without-extension", "A2 result-stale <- A1 saved-without-extension");
    }

    @Test
    void standsAboveThemWhereOnlyTheSpellingShowsIt() {
      assertThat(
              toldInCells(
                  Grid.sheet("Data")
                      .row(new Stored("=tenthmark.lab.reading(1,\"wide\",2)", 7))
                      .workbook(),
                  Grading.DECLARED))
          .containsExactly(
              "A1 saved-without-extension", "A1 result-stale <- A1 saved-without-extension");
    }

    @Test
    void hidesNoStaleResultWhereItIsNotReported() {
      assertThat(toldInCells(workbook, without("saved-without-extension")))
          .containsExactly("A2 result-stale");
    }
  }

  @Nested
  class AWrongContribution {

    /** The reading should be 0.5; total and result were typed from it. */
    private final Workbook workbook =
        Findings.table()
            .row(
                "Spoke, length",
                "s",
                290.5,
                "mm",
                1,
                "fine",
                2,
                5,
                0.1,
                null,
                null,
                null,
                0.6,
                null)
            .row("Why", Findings.REASON)
            .workbook();

    @Test
    void standsAboveTheTotalThatIsRightWithoutIt() {
      assertThat(told(workbook, Grading.DECLARED))
          .containsExactly("H2 reading-differs", "M2 total-differs <- H2 reading-differs");
    }

    @Test
    void isChargedOnce() {
      assertThat(points(workbook)).isEqualTo(1);
    }

    @Test
    void isChargedAsTheDearestOfWhatIsFoundOfIt() {
      Grading grading =
          new Grading(
              Map.of(
                  "reading-differs", new RulePolicy(true, Optional.empty(), 0.5),
                  "total-differs", new RulePolicy(true, Optional.empty(), 2)));

      assertThat(Findings.all(workbook, grading))
          .extracting(Finding::points)
          .containsExactly(2.0, 0.0);
    }
  }

  @Nested
  class ATotalThatIsWrong {

    /** Should be 0.6: smaller than the value, and with its digits. */
    private final Workbook workbook =
        Findings.table()
            .row(
                "Foam grip, wall",
                "w",
                5.5,
                "mm",
                1,
                "fine",
                2,
                0.5,
                0.1,
                null,
                null,
                null,
                60,
                null)
            .row("Why", Findings.REASON)
            .workbook();

    @Test
    void standsAboveWhatItsSizeBringsAbout() {
      assertThat(told(workbook, Grading.DECLARED))
          .containsExactly(
              "M2 total-differs",
              "C2 digits-unmatched <- M2 total-differs",
              "M2 uncertainty-exceeds-value <- M2 total-differs");
    }
  }

  @Nested
  class FindingsThatHaveNothingToDoWithOneAnother {

    @Test
    void areChargedEach() {
      Workbook workbook =
          Findings.table()
              .row(
                  "Spoke, length",
                  "s",
                  290,
                  "mm",
                  1,
                  "fine",
                  2,
                  0.5,
                  0.1,
                  null,
                  null,
                  null,
                  60,
                  null)
              .row("Spoke, width", "w", 2.5, "mm", 1, "fine", 2, 5, null, null, null, null, 5, null)
              .row("Why", Findings.REASON)
              .workbook();

      assertThat(told(workbook, Grading.DECLARED))
          .containsExactly(
              "M2 total-differs", "H3 reading-differs", "M3 uncertainty-exceeds-value");
    }
  }
}
