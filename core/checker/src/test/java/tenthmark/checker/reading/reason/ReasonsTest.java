package tenthmark.checker.reading.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.course.Course;
import tenthmark.checker.reading.Reading;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.Rationale;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Grid;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;

/** Where the reason of a record is found. Benches and numbers are invented. */
class ReasonsTest {

  private static final Catalogue FUNCTIONS = Catalogue.load();
  private static final String FINE = "Fine marks, both ends judged by eye.";
  private static final String SOFT = "The foam is soft, its edge is unclear.";

  private static Reading read(Grid grid) {
    return Inspection.of(grid.workbook(), FUNCTIONS, Course.PLAIN).reading();
  }

  /** The reason of each record, and "-" for none. */
  private static List<String> reasons(Grid grid) {
    return read(grid).tables().stream()
        .flatMap(table -> table.records().stream())
        .map(found -> found.rationale().map(Rationale::text).filter(text -> !text.isEmpty()))
        .map(text -> text.orElse("-"))
        .toList();
  }

  /** A spoke in row 2 and a grip in row 3, without a word of why. */
  private static Grid bench() {
    return Grid.sheet("Bench")
        .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty")
        .row("Spoke", "L", 262.5, "mm", 0.5)
        .row("Foam grip", "d", 31.5, "mm", 0.8);
  }

  @Test
  void isMissingWhereNothingIsSaid() {
    assertThat(reasons(bench())).containsExactly("-", "-");
  }

  /** Two words and a text below them are no table that waits for numbers, as it has some. */
  @Test
  void mayBeginWithTheSignOfAnUncertainty() {
    String why = "Δm/m: leaflet of the balance. ΔV/V: half a mark of the cylinder.";
    Grid grid =
        Grid.sheet("Parts")
            .row("part", "mass (g)", "Δm/m", "volume (ml)", "ΔV/V", "ρ (g/ml)", "Δρ/ρ")
            .row("axle", 154.2, 0.002, 19.5, 0.03, "=B2/D2", "=C2+E2")
            .row("plate", 93.6, 0.002, 34.5, 0.02, "=B3/D3", "=C3+E3")
            .row(why);

    assertThat(reasons(grid)).contains(why).doesNotContain("-");
  }

  @Nested
  class InAComment {

    @ParameterizedTest
    @ValueSource(strings = {"A2", "B2", "C2", "D2", "E2"})
    void onAnyPartOfARecordIsItsReason(String cell) {
      assertThat(reasons(bench().comment(cell, FINE))).containsExactly(FINE, "-");
    }

    @ParameterizedTest
    @ValueSource(strings = {"C1", "E1"})
    void onAHeadingServesTheColumn(String cell) {
      assertThat(reasons(bench().comment(cell, FINE))).containsExactly(FINE, FINE);
    }

    @Test
    void onSeveralPartsIsJoined() {
      assertThat(reasons(bench().comment("C2", FINE).comment("E2", SOFT)))
          .containsExactly(FINE + "\n" + SOFT, "-");
    }

    @Test
    void besideTheTableServesWhatItNames() {
      String named = "d was taken at the thicker end of it";

      assertThat(reasons(bench().comment("H9", named))).containsExactly("-", named);
    }

    @Test
    void besideTheTableServesNothingThatItDoesNotName() {
      assertThat(reasons(bench().comment("H9", "A value from a handbook of 1998.")))
          .containsExactly("-", "-");
    }

    @Test
    void onANumberOutsideTheTableIsAboutThatNumber() {
      Grid grid = bench().row().row("Handbook", "=31+0.5").comment("B5", "d after the maker");

      assertThat(reasons(grid)).containsExactly("-", "-");
    }

    @Test
    void onAHiddenSheetIsNotRead() {
      assertThat(reasons(bench().andHiddenSheet("Notes").comment("A1", "L and d: " + FINE)))
          .containsExactly("-", "-");
    }
  }

  @Nested
  class InABox {

    @Test
    void besideTheTableServesAllOfIt() {
      assertThat(reasons(bench().box("G2", FINE))).containsExactly(FINE, FINE);
    }

    @Test
    void thatNamesRecordsServesEachWithItsParagraph() {
      Grid grid = bench().box("G1", "L: " + FINE + "\nd: " + SOFT);

      assertThat(reasons(grid)).containsExactly("L: " + FINE, "d: " + SOFT);
    }

    @Test
    void aboveTheTableServesItWhereAWordCallsItAReason() {
      assertThat(
              reasons(
                  Grid.sheet("Bench")
                      .row()
                      .row()
                      .row()
                      .box("A1", "Reason: " + FINE)
                      .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty")
                      .row("Spoke", "L", 262.5, "mm", 0.5)))
          .containsExactly(FINE);
    }

    @Test
    void aboveTheTableIsNoReasonWithoutSuchAWord() {
      assertThat(
              reasons(
                  Grid.sheet("Bench")
                      .row()
                      .row()
                      .row()
                      .box("A1", "Write your names here, please.")
                      .row("Quantity", "Symbol", "Value", "Unit", "Uncertainty")
                      .row("Spoke", "L", 262.5, "mm", 0.5)))
          .containsExactly("-");
    }

    @Test
    void onAnotherSheetServesWhatItNames() {
      assertThat(reasons(bench().andSheet("Notes").box("B2", "Spoke: " + FINE)))
          .containsExactly("Spoke: " + FINE, "-");
    }

    @Test
    void staysOnTheSheetWhereACellIsChanged() {
      Workbook changed =
          bench()
              .box("G2", FINE)
              .workbook()
              .with(Map.of(new CellAddress("Bench", 9, 9), Optional.of(new Content.Text("end"))));

      assertThat(changed.sheets().get(0).boxes()).hasSize(1);
    }

    @Test
    void ofOneOrTwoWordsIsNone() {
      assertThat(reasons(bench().box("G2", "Bench 7"))).containsExactly("-", "-");
    }

    @Test
    void leavesTheNumberUnderItWhatItIs() {
      assertThat(read(bench().box("C2", FINE)).coverage().at(new CellAddress("Bench", 2, 1)))
          .get()
          .isInstanceOfSatisfying(
              Taken.Part.class, part -> assertThat(part.field()).isEqualTo(Field.VALUE));
    }
  }

  @Nested
  class InACell {

    @Test
    void ofItsColumnComesFirst() {
      Grid grid =
          Grid.sheet("Bench")
              .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
              .row("Spoke", 262.5, "mm", 0.5, FINE)
              .comment("B2", SOFT);

      assertThat(reasons(grid)).containsExactly(FINE);
    }

    @Test
    void belowTheTableServesAllOfIt() {
      assertThat(reasons(bench().row().row(FINE))).containsExactly(FINE, FINE);
    }

    @Test
    void thatNamesARecordServesIt() {
      assertThat(reasons(bench().row().row("Foam grip: " + SOFT)).get(1))
          .isEqualTo("Foam grip: " + SOFT);
    }

    @Test
    void ofAnotherSheetServesWhatItNames() {
      assertThat(reasons(bench().andSheet("Notes").row("Spoke: " + FINE)))
          .containsExactly("Spoke: " + FINE, "-");
    }
  }
}
