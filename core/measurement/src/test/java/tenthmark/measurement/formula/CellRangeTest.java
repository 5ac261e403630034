package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellRangeTest {

  /** C3:E4. */
  private static final CellRange RANGE = new CellRange("Bench", 2, 2, 4, 3);

  @Nested
  class Contains {

    @ParameterizedTest
    @CsvSource({"2, 2", "4, 2", "2, 3", "4, 3", "3, 3"})
    void itsCornersAndWhatLiesBetween(int column, int row) {
      assertThat(RANGE.contains(new CellAddress("Bench", column, row))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "5, 3", "2, 1", "4, 4"})
    void noneOfItsNeighbours(int column, int row) {
      assertThat(RANGE.contains(new CellAddress("Bench", column, row))).isFalse();
    }

    @Test
    void onlyCellsOfItsSheetInAnyLetterCase() {
      assertThat(RANGE.contains(new CellAddress("BENCH", 3, 3))).isTrue();
      assertThat(RANGE.contains(new CellAddress("Graph", 3, 3))).isFalse();
    }

    @Test
    void everyCellThatItLists() {
      assertThat(RANGE.cells()).hasSize(RANGE.width() * RANGE.height()).allMatch(RANGE::contains);
    }
  }

  @Test
  void ofOneCellContainsThatCellAlone() {
    CellAddress cell = new CellAddress("Bench", 7, 9);

    assertThat(CellRange.of(cell).cells()).containsExactly(cell);
    assertThat(CellRange.of(cell).first()).isEqualTo(cell);
  }
}
