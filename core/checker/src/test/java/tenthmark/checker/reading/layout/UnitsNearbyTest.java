package tenthmark.checker.reading.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Grid;

/** Units where a person would look for them. Wheels and numbers are invented. */
class UnitsNearbyTest {

  @Test
  void areThoseOfAllValuesBeforeAColumnOfUnits() {
    Grid grid =
        Grid.sheet("Wheels")
            .row("Quantity", "Front", "±", "Rear", "±", "Unit")
            .row("girth", 2105, 3, 2112, 3, "mm")
            .row("mass", 1.24, 0.02, 1.86, 0.02, "kg");

    assertThat(RecordsRead.of(grid))
        .containsExactlyInAnyOrder("B2 ± C2 mm", "D2 ± E2 mm", "B3 ± C3 kg", "D3 ± E3 kg");
  }

  @Test
  void areThoseOfAllValuesBehindAColumnOfUnits() {
    Grid grid =
        Grid.sheet("Wheels")
            .row("Quantity", "Unit", "Front", "±", "Rear", "±")
            .row("girth", "mm", 2105, 3, 2112, 3)
            .row("mass", "kg", 1.24, 0.02, 1.86, 0.02);

    assertThat(RecordsRead.of(grid))
        .containsExactlyInAnyOrder("C2 ± D2 mm", "E2 ± F2 mm", "C3 ± D3 kg", "E3 ± F3 kg");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Time to stop in s", "Time to stop (s)", "Time to stop t = 2πn/α in s"})
  void mayStandInTheCaptionOfATable(String caption) {
    Grid grid =
        Grid.sheet("Hub")
            .row(caption)
            .row("hub", "value", "±")
            .row("dry", 38.2, 0.4)
            .row("oiled", 74.1, 0.4);

    assertThat(RecordsRead.of(grid)).containsExactly("B3 ± C3 s", "B4 ± C4 s");
  }

  @Test
  void ofACaptionAreNoneWhereTheTableHasItsOwn() {
    Grid grid =
        Grid.sheet("Hub")
            .row("Time to stop in s")
            .row("turns n (1/s)", "±", "ratio", "±")
            .row(2.0, 0.05, 0.5, 0.02)
            .row(3.0, 0.05, 0.7, 0.02);

    assertThat(RecordsRead.of(grid)).contains("C3 ± D3", "C4 ± D4");
  }

  @ParameterizedTest
  @CsvSource({"'kg, give or take', kg", "'mm, ±', mm", "'°C, Δϑ₀ =', °C"})
  void mayLeadOnToTheUncertainty(String text, String unit) {
    Grid grid = Grid.sheet("Report").row("The front wheel weighs", 38.5, text, 0.5);

    assertThat(RecordsRead.of(grid)).containsExactly("B1 ± D1 " + unit);
  }
}
