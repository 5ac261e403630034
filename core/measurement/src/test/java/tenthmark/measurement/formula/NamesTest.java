package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names stand for formulas (OASIS OpenDocument 1.3, part 4, 5.11: named expressions). */
class NamesTest {

  private final Follower follower = new Follower(new Formulas());

  private CellModel model(Grid grid, String result, String... inputs) {
    return follower.model(
        grid, Grid.address(result), Arrays.stream(inputs).map(Grid::address).toList());
  }

  private double sensitivity(Grid grid, String result, String input, double at) {
    return model(grid, result, input).linearised(at).sensitivities()[0];
  }

  @Nested
  class StandForAnyFormula {

    private final Grid grid =
        new Grid()
            .put("B2", 3)
            .put("Timing.B3", 5)
            .name("radius", "$Sheet1.$B$2")
            .name("diam", "2*$B$2")
            .name("offs", "10+$B$2")
            .name("gee", "9.81")
            .name("area", "PI()*diam^2/4")
            .name("both", "$Sheet1.$B$2:$Sheet1.$B$2")
            .name("other", "$Timing.$B$3^2")
            .name("twice.both", "SUM(both;diam)");

    // derivatives by hand
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=radius | 3 | 1",
          "=diam | 6 | 2",
          "=diam^2 | 36 | 24",
          "=DIAM*1 | 6 | 2",
          "=offs | 13 | 1",
          "=offs*2 | 26 | 2",
          "=gee*B2 | 29.43 | 9.81",
          "=area/PI() | 9 | 6",
          "=SUM(both;1) | 4 | 1",
          "=twice.both | 9 | 3",
          "=other*B2 | 75 | 25",
          "=IF(offs>12;diam;0) | 6 | 2"
        })
    void andAreDerivedThrough(String formula, double value, double slope) {
      grid.put("C1", formula);
      assertThat(model(grid, "C1", "B2").value(3)).isEqualTo(value);
      assertThat(sensitivity(grid, "C1", "B2", 3)).isEqualTo(slope);
    }

    @Test
    void alsoInCellsBetween() {
      grid.put("C1", "=D1^2").put("D1", "=diam");
      assertThat(sensitivity(grid, "C1", "B2", 3)).isEqualTo(8 * 3);
    }
  }

  @Nested
  class RelativeOnes {

    /** The cell left of the user, as defined with the cursor on B1. */
    private final Grid grid =
        new Grid()
            .name("left", "A1", "B1")
            .name("above", "Sheet1.B1", "B2")
            .name("sums", "SUM(A$1:A1)", "B1")
            .put("A1", 2)
            .put("A2", 3)
            .put("A3", 5);

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "B2 | =left*10 | A2 | 3 | 30",
          "B3 | =left*10 | A3 | 5 | 50",
          "A4 | =above*10 | A3 | 5 | 50",
          "B3 | =sums | A2 | 3 | 10",
          "B2 | =sums | A2 | 3 | 5"
        })
    void moveWithTheCellThatUsesThem(
        String cell, String formula, String input, double at, double value) {
      grid.put(cell, formula);
      assertThat(model(grid, cell, input).value(at)).isEqualTo(value);
      assertThat(model(grid, cell, input).reaches(0)).isTrue();
    }

    @Test
    void areSeenFromEachCellOnTheWay() {
      grid.put("B2", "=left*10").put("C2", "=left+1").put("D2", "=left*B2");
      assertThat(model(grid, "D2", "A2").value(3)).isEqualTo(31 * 30);
    }

    /** As LibreOffice 7.4.7 and ECMA-376 have it: past the edge on to the other end. */
    @Test
    void goOnAtTheOtherEndOfTheSheet() {
      grid.name("before", "XFD1", "A1").name("up", "A1048576", "A1").put("B2", "=before*up");
      grid.put("B1", 7);
      assertThat(model(grid, "B2", "A2").value(3)).isEqualTo(21);
    }

    @Test
    void areOnTheSheetThatUsesThem() {
      grid.put("Timing.B2", "=left*10").put("Timing.A2", 4).put("Timing.A4", "=above");
      grid.put("Timing.A3", 9);
      assertThat(model(grid, "Timing.B2", "Timing.A2").value(4)).isEqualTo(40);
      assertThat(model(grid, "Timing.A4", "Timing.A3").value(9)).isEqualTo(9);
    }
  }

  @Nested
  class Mistakes {

    private final Grid grid =
        new Grid()
            .put("B2", 3)
            .name("itself", "itself+1")
            .name("ping", "pong*2")
            .name("pong", "ping+$B$2")
            .name("broken", "2*($B$2")
            .name("elsewhere", "Timing.A1", "A1");

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=B2*itself | the name itself stands for itself, or for more names than can be followed.",
          "=B2*ping | the name ping stands for itself, or for more names than can be followed.",
          "=B2*broken | name broken: the formula ends too early.",
          "=B2*nowhere | nowhere is not a name that this workbook defines."
        })
    void areToldByName(String formula, String sentence) {
      grid.put("C1", formula);
      assertThatThrownBy(() -> model(grid, "C1", "B2").value(3)).hasMessage("cell C1: " + sentence);
    }

    @Test
    void includeASheetThatWouldMoveToo() {
      grid.put("Timing.C1", "=elsewhere").put("Timing.A1", 3).put("Other.C1", "=elsewhere");
      assertThatThrownBy(() -> model(grid, "Other.C1", "Timing.A1").value(3))
          .hasMessageContaining("the sheet Timing that moves with the sheet");
    }

    @Test
    void includeNamesThatDoubleAtEachStep() {
      grid.name("step.0", "$B$2");
      for (int i = 1; i < 20; i++) {
        grid.name("step." + i, "step." + (i - 1) + "+step." + (i - 1));
      }
      grid.put("C1", "=step.19");
      assertThatThrownBy(() -> model(grid, "C1", "B2").value(3)).hasMessageContaining("more names");
    }
  }
}
