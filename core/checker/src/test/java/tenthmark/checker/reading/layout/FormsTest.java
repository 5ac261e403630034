package tenthmark.checker.reading.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.workbook.Grid;

/** Labels with what stands behind or below them. People and numbers are invented. */
class FormsTest {

  private static List<String> quantities(Grid grid) {
    return RecordsRead.records(grid).stream()
        .map(found -> found.text(Field.QUANTITY).orElse(""))
        .toList();
  }

  @Nested
  class InOneColumn {

    private static Grid slope(String between) {
      return Grid.sheet("Slope")
          .row("A shoe on the inclined plank")
          .row()
          .row("Height h of its end (cm)")
          .row(41.5)
          .row("uncertainty of h (cm)")
          .row(0.5)
          .row(between)
          .row("Length L of the plank (cm)")
          .row(80.0)
          .row("uncertainty of L (cm)")
          .row(0.2)
          .row("because a millimetre is read at both ends of the tape")
          .row("Base b (cm)")
          .row("=SQRT(A9^2-A4^2)")
          .row("uncertainty of b (cm)")
          .row("=(A9*A11+A4*A6)/A14");
    }

    @Test
    void eachNumberHasTheLabelAboveIt() {
      assertThat(RecordsRead.of(slope("because it slides off while the plank is lifted")))
          .containsExactly("A4 ± A6 cm", "A9 ± A11 cm", "A14 ± A16 cm");
    }

    @Test
    void aReasonBelowIsTheReason() {
      MeasurementRecord height =
          RecordsRead.records(slope("because it slides off while the plank is lifted")).get(0);

      assertThat(height.rationale().orElseThrow().text())
          .isEqualTo("because it slides off while the plank is lifted");
    }

    @Test
    void aLabelAboveASeriesIsNoLabelOfItsFirstNumber() {
      Grid grid =
          Grid.sheet("Slope").row("time t (s)").row(8.6).row(8.4).row(8.5).row("± (s)").row(0.2);

      assertThat(RecordsRead.of(grid)).doesNotContain("A2 ± A6 s");
    }
  }

  @Nested
  class QuestionsWithAnswers {

    private static Grid gears(Object... answer) {
      return Grid.sheet("Gears")
          .row("Q1. How long is the crank arm, from the middle of the axle to the pedal?")
          .row(answer)
          .row("How do you know?", "the axles have no marked centre, half a millimetre each");
    }

    @Test
    void areReadWithTheQuestionAsTheirName() {
      Grid grid = gears(null, 170.5, "±", 1.0, "mm");

      assertThat(RecordsRead.of(grid)).containsExactly("B2 ± D2 mm");
      assertThat(RecordsRead.records(grid).get(0).name().toString()).contains("crank arm");
    }

    @Test
    void areNoRecordsWithoutASign() {
      assertThat(RecordsRead.of(gears(null, 44, "cogs", 16))).isEmpty();
    }
  }

  @Nested
  class Sentences {

    @Test
    void holdValueUncertaintyAndUnitInTheirCells() {
      Grid grid =
          Grid.sheet("Spoke")
              .row("Its free length is", 262, "mm, give or take", 1, "mm.")
              .row("The tone that I hear has", 410, "Hz, give or take", 5, "Hz.")
              .row("That makes", "=2*B1*B2/1000", "m/s, give or take", "=B3*(D1/B1+D2/B2)", "m/s.");

      assertThat(RecordsRead.of(grid)).containsExactly("B1 ± D1 mm", "B2 ± D2 Hz", "B3 ± D3 m/s");
    }
  }

  @Nested
  class UnitsInNumberFormats {

    private static Grid pedal() {
      return Grid.sheet("Pedal")
          .row("Length of the crank", 172.5, 0.5, "steel rule, a quarter of a mark at each end")
          .row("Mass on the pedal", 12.40, 0.05, "hanging scale, half a division")
          .row("g", 9.81);
    }

    private static Grid shown() {
      return pedal()
          .format("B1", "0.0\" mm\"")
          .format("C1", "\"± \"0.0\" mm\"")
          .format("B2", "0.00\" kg\"")
          .format("C2", "\"± \"0.00\" kg\"")
          .format("B3", "0.00\" m/s²\"");
    }

    @Test
    void areUnitsAndSignsAsAPersonSeesThem() {
      assertThat(RecordsRead.of(shown())).containsExactly("B1 ± C1 mm", "B2 ± C2 kg");
      assertThat(quantities(shown())).hasSize(2);
    }

    @Test
    void sayNothingWhereNumbersAreShownPlainly() {
      assertThat(RecordsRead.of(pedal())).isEmpty();
    }

    @Test
    void makeAnUncertaintyOfAColumnWithoutHeading() {
      Grid grid =
          Grid.sheet("Spokes")
              .row("Spoke", "Length")
              .row("front", 262.5, 0.5)
              .row("rear", 260.5, 0.5);
      for (int row = 2; row <= 3; row++) {
        grid.format("B" + row, "0.0\" mm\"").format("C" + row, "\"± \"0.0\" mm\"");
      }

      assertThat(RecordsRead.of(grid)).containsExactly("B2 ± C2 mm", "B3 ± C3 mm");
    }
  }
}
