package tenthmark.checker.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.CoverageSummary.Unread;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** Numbers are invented. */
class CoverageSummaryTest {

  private static final Catalogue FUNCTIONS = Catalogue.load();
  private static final Message ODD = Message.verbatim("the heading is odd");
  private static final Message LONE = Message.verbatim("nothing stands beside it");

  private final Workbook workbook =
      Grid.sheet("Bench")
          .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
          .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
          .row("Trial", "Odd", "Odd too")
          .row(1, 7.5, 7.6)
          .row(2, 8.5, 8.6)
          .andSheet("More")
          .row(9.5)
          .workbook();
  private final Map<CellAddress, Taken> cells = new LinkedHashMap<>();

  private void take(String sheet, int column, int row, Taken taken) {
    cells.put(new CellAddress(sheet, column, row), taken);
  }

  private CoverageSummary summary() {
    return CoverageSummary.of(new Coverage(cells), Evaluation.of(workbook, FUNCTIONS));
  }

  @Test
  void countsNumbersByWhatTheyWereTakenForAndJoinsWhatWasNotRead() {
    MeasurementRecord crank = Inspection.of(workbook, FUNCTIONS, Course.PLAIN).records().get(0);
    take("Bench", 1, 1, new Taken.Part(crank, Field.VALUE));
    take("Bench", 2, 1, new Taken.Part(crank, Field.UNIT));
    take("Bench", 3, 1, new Taken.Part(crank, Field.UNCERTAINTY));
    take("Bench", 1, 2, new Taken.NotRead(ODD));
    for (int row : new int[] {3, 4}) {
      take("Bench", 0, row, new Taken.Other(NumberRole.INDEX));
      take("Bench", 1, row, new Taken.NotRead(ODD));
      take("Bench", 2, row, new Taken.NotRead(LONE));
    }
    take("More", 0, 0, new Taken.NotRead(ODD));

    CoverageSummary summary = summary();

    assertThat(summary.inRecords()).as("a unit is no number").isEqualTo(2);
    assertThat(summary.others()).containsExactly(Map.entry(NumberRole.INDEX, 2));
    assertThat(summary.unread()).extracting(Unread::why).containsExactly(ODD, LONE, ODD);
    assertThat(summary.unread())
        .extracting(unread -> unread.first().sheet() + " " + unread.places())
        .containsExactly("Bench B3:B5", "Bench C4:C5", "More A1");
    assertThat(summary.unread())
        .as("a heading is no number")
        .extracting(Unread::numbers)
        .containsExactly(2, 2, 1);
    assertThat(summary.numbersNotRead()).isEqualTo(5);
    assertThat(summary.numbers()).isEqualTo(9);
  }

  @Test
  void aBlankTableWhoseHeadingsWereUnderstoodWasRead() {
    take("Bench", 0, 3, new Taken.Other(NumberRole.INDEX));
    assertThat(summary().isNothing(0)).as("numbers without a heading").isTrue();
    assertThat(summary().isNothing(1)).as("a record").isFalse();

    take("Bench", 1, 0, new Taken.Heading(Field.VALUE));
    assertThat(summary().isNothing(0)).as("a heading").isFalse();

    take("Bench", 1, 3, new Taken.NotRead(ODD));
    assertThat(summary().isNothing(0)).as("a number that was not read").isTrue();
  }

  @Test
  void namesAtMostTwelveRangesAndCountsTheOthers() {
    IntStream.range(0, 15).forEach(index -> take("More", 0, 2 * index, new Taken.NotRead(LONE)));

    assertThat(CheckerTexts.english().say(summary().unread().get(0).places()))
        .startsWith("A1, A3, A5, ")
        .endsWith("A21, A23 and 3 more ranges");
  }
}
