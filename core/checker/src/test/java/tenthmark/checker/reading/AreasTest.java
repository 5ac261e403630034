package tenthmark.checker.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

class AreasTest {

  private static CellAddress cell(String place) {
    return new CellAddress("Data", place.charAt(0) - 'A', Integer.parseInt(place.substring(1)) - 1);
  }

  @ParameterizedTest
  @CsvSource({
    "C5, C5",
    "C5 C6 C7, C5:C7",
    "C7 C5 C6, C5:C7",
    "C5 D5 E5, C5:E5",
    "C5 C6 D5 D6, C5:D6",
    "C5 C6 D5, D5 C5:C6",
    "C5 C7, C5 C7",
    "C5 D6, C5 D6",
    "B9 C5 C6, C5:C6 B9"
  })
  void joinsCellsBelowAndThenBesideEachOther(String cells, String ranges) {
    List<CellAddress> places = Arrays.stream(cells.split(" ")).map(AreasTest::cell).toList();

    assertThat(Areas.of(places))
        .extracting(CellRange::place)
        .containsExactlyElementsOf(List.of(ranges.split(" ")));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void holdsEachCellOnceWhateverTheirPattern(long seed) {
    Random random = new Random(seed);
    Set<CellAddress> cells = new HashSet<>();
    for (int i = 0; i < 60; i++) {
      cells.add(new CellAddress("Data", random.nextInt(8), random.nextInt(12)));
    }
    List<CellAddress> shuffled = new ArrayList<>(cells);
    Collections.shuffle(shuffled, random);

    assertThat(Areas.of(shuffled).stream().flatMap(area -> area.cells().stream()))
        .containsExactlyInAnyOrderElementsOf(cells);
  }

  @Test
  void areNoneOfNoCells() {
    assertThat(Areas.of(List.of())).isEmpty();
  }
}
