package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tenthmark.checker.course.Course;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.SheetConvention;
import tenthmark.checker.workbook.Grid;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorkbookConvention;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.DigitsRule;

/** A workbook that holds its course's convention computes by it. The course is invented. */
class WorkbookConventionTest {

  private static final Catalogue FUNCTIONS = Catalogue.load();

  private static final Convention HALVES =
      new Convention("our bench", 0.5, 0.5, Combine.QUADRATURE, new DigitsRule.Fixed(2), 0.3, 2);

  private static Grid withConvention(Grid grid) {
    Grid course = grid.andSheet("Course");
    WorkbookConvention.rows(HALVES)
        .forEach(row -> course.row(content(row.get(0)), content(row.get(1)), "what it means"));
    return course.name(WorkbookConvention.NAME, "Course!$A$1:$C$7");
  }

  private static Object content(Value value) {
    return value instanceof Value.Numeric number
        ? (Object) number.number()
        : ((Value.Text) value).text();
  }

  private static Value value(Grid grid) {
    Outcome outcome = Evaluation.of(grid.workbook(), FUNCTIONS).at(new CellAddress("Bench", 0, 0));
    return ((Outcome.Known) outcome).value();
  }

  private static double number(Grid grid) {
    return ((Value.Numeric) value(grid)).number();
  }

  /** Half a division each end; 3, 4 and 5 make a right triangle; the rest by hand. */
  @ParameterizedTest
  @CsvSource({
    "'=LAB_READING(1,\"fine\",2)', 1, 0.5",
    "'=LAB_READING(1)', 0.5, 0.1",
    "'=LAB_READING(1,0.1,2)', 0.2, 0.2",
    "'=LAB_HANDTIMED(10)', 0.03, 0.02",
    "'=LAB_HANDTIMED(10,0.25)', 0.025, 0.025",
    "'=LAB_TOTAL({3,4})', 5, 7",
    "'=LAB_TOTAL({3,4},\"straight\")', 7, 7",
    "'=LAB_ROUNDEDERROR(172.5,0.314)', 0.31, 0.3",
  })
  void isWhatFunctionsFollowWhereTheyAreToldNothingElse(
      String formula, double withIt, double byBench) {
    assertThat(number(withConvention(Grid.sheet("Bench").row(formula))))
        .isCloseTo(withIt, within(1e-12));
    assertThat(number(Grid.sheet("Bench").row(formula))).isCloseTo(byBench, within(1e-12));
  }

  @Test
  void isReadAsItWasWritten() {
    Evaluation evaluation =
        Evaluation.of(withConvention(Grid.sheet("Bench")).workbook(), FUNCTIONS);

    assertThat(evaluation.convention()).isEqualTo(HALVES);
  }

  @Test
  void leavesWhatItDoesNotSayToBench() {
    Grid grid =
        Grid.sheet("Bench").row("fine", 0.5).row("wide").name("LAB_CONVENTION", "Bench!$A$1:$B$2");

    assertThat(Evaluation.of(grid.workbook(), FUNCTIONS).convention())
        .isEqualTo(
            new Convention("own", 0.1, 0.5, Combine.STRAIGHT, new DigitsRule.Bench(), 0.2, 1));
  }

  @ParameterizedTest
  @CsvSource({
    "fine, 2, 'LAB_CONVENTION, fine is 2; it must be a number greater than 0 and at most 1.'",
    "fin, 0.5, 'LAB_CONVENTION is the text \"fin\"; it must be one of convention, wide, fine,"
        + " combine, digits, reaction, coverage.'"
  })
  void thatCannotBeReadIsSaidByTheFunctionThatNeedsIt(String word, double size, String sentence) {
    Grid grid =
        Grid.sheet("Bench")
            .row("=LAB_RESULT(1,0.1)", word, size)
            .name("LAB_CONVENTION", "Bench!$B$1:$C$1");

    assertThat(((Value.Text) value(grid)).text()).contains(sentence);
    assertThatThrownBy(() -> Evaluation.of(grid.workbook(), FUNCTIONS).convention())
        .isInstanceOf(ArgumentException.class);
  }

  @Test
  void isNoMeasurement() {
    Inspection inspection =
        Inspection.of(
            withConvention(
                    Grid.sheet("Bench")
                        .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale")
                        .row("Crank arm", "L", 172.5, "mm", 0.5, "Fine marks at both ends."))
                .workbook(),
            FUNCTIONS,
            Course.PLAIN);

    assertThat(inspection.records()).hasSize(1);
    assertThat(inspection.coverage().numbersNotRead()).isZero();
    assertThat(RuleCatalogue.load().check(inspection)).isEmpty();
  }

  /** So a workbook that follows its own convention has no finding, whoever checks it. */
  @Test
  void isTheOneByWhichAWorkbookIsCheckedWhereNoProfileIsGiven() {
    Inspection inspection =
        Inspection.of(
            withConvention(
                    Grid.sheet("Bench")
                        .row("Quantity", "Symbol", "Value", "Unit", "Reading", "Uncertainty", "Why")
                        .row(
                            "Crank arm",
                            "L",
                            172,
                            "mm",
                            "=LAB_READING(1,\"fine\",2)",
                            "=LAB_TOTAL(E2:E2)",
                            "Fine marks at both ends."))
                .workbook(),
            FUNCTIONS,
            Course.PLAIN);

    assertThat(RuleCatalogue.load().check(inspection)).isEmpty();
    assertThat(SheetConvention.of(inspection, "as in it")).isEqualTo(HALVES);
  }
}
