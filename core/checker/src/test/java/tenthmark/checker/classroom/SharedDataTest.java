package tenthmark.checker.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.reading.CoverageSummary;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.Grid;

/** Students and numbers are invented. */
class SharedDataTest {

  private static final double[] DATA = {172.5, 262.4, 131.2, 12.34, 12.41, 12.29, 413};

  private static FileReport workbook(String name, double... numbers) {
    return FileReport.checked(
        Path.of(name),
        new Contents(
            List.of(),
            List.of(),
            CoverageSummary.NONE,
            List.of(),
            List.of(),
            Arrays.stream(numbers).boxed().toList()),
        List.of());
  }

  private static FileReport random(String name, Random random, int count) {
    return workbook(
        name, random.doubles(count, 9.5, 10.5).map(t -> Math.round(t * 100) / 100.0).toArray());
  }

  @Test
  void isSixDifferentNumbersInTheSameOrder() {
    List<SharedData> pairs =
        SharedData.of(List.of(workbook("ada", DATA), workbook("ben", DATA), workbook("cleo", 1)));

    assertThat(pairs)
        .containsExactly(
            new SharedData(
                Path.of("ada"), Path.of("ben"), 7, Arrays.stream(DATA).boxed().toList()));
  }

  @Test
  void isFoundAlthoughAFewNumbersWereChangedOrAdded() {
    double[] changed = {172.5, 262.4, 999.9, 131.2, 12.34, 12.41, 12.29, 414};

    assertThat(SharedData.of(List.of(workbook("ada", DATA), workbook("ben", changed))))
        .singleElement()
        .satisfies(
            pair ->
                assertThat(pair.numbers())
                    .containsExactly(172.5, 262.4, 131.2, 12.34, 12.41, 12.29));
  }

  /** A logger writes a row each second for sixteen hours and more; the numbers are invented. */
  @Nested
  class InColumnsOfALogger {

    private static final int ROWS = 60_000;

    private static double[] logged(long seed) {
      return new Random(seed)
          .ints(ROWS, 50_000_000, 500_000_000)
          .mapToDouble(reading -> (2 * reading + 1) / 1000.0)
          .toArray();
    }

    @Test
    void isFoundThoughSomeRowsDiffer() {
      double[] column = logged(1);
      double[] changed = column.clone();
      for (int row = 0; row < ROWS; row += 100) {
        changed[row] = -column[row];
      }

      assertThat(SharedData.of(List.of(workbook("ada", column), workbook("ben", changed))))
          .singleElement()
          .satisfies(
              pair -> {
                assertThat(pair.count()).isEqualTo(ROWS - ROWS / 100);
                assertThat(pair.numbers()).hasSize(SharedData.SHOWN).startsWith(column[1]);
              });
    }

    @Test
    void isFoundInEachGroupOfAWholeClass() {
      List<FileReport> all = new ArrayList<>();
      for (int student = 0; student < 40; student++) {
        all.add(workbook("student " + student, logged(student / 4)));
      }

      assertThat(SharedData.of(all))
          .hasSize(10 * 6)
          .allSatisfy(pair -> assertThat(pair.count()).isEqualTo(ROWS));
    }

    @Test
    void isNotWhereTheWholeClassIsGivenThem() {
      List<FileReport> all = new ArrayList<>();
      for (int student = 0; student < 40; student++) {
        all.add(workbook("student " + student, logged(1)));
      }

      assertThat(SharedData.of(all)).isEmpty();
    }
  }

  @Nested
  class IsNot {

    @Test
    void fiveNumbers() {
      double[] five = Arrays.copyOf(DATA, 5);
      assertThat(SharedData.of(List.of(workbook("ada", five), workbook("ben", five)))).isEmpty();
    }

    @Test
    void oneNumberSixTimes() {
      double[] same = {172.5, 172.5, 172.5, 172.5, 172.5, 172.5, 172.5};
      assertThat(SharedData.of(List.of(workbook("ada", same), workbook("ben", same)))).isEmpty();
    }

    @Test
    void numbersOfTwoDigits() {
      double[] short1 = {17, 26, 13, 1.2, 1.4, 0.0029, 4100};
      assertThat(SharedData.of(List.of(workbook("ada", short1), workbook("ben", short1))))
          .isEmpty();
    }

    @Test
    void theSameNumbersInAnotherOrder() {
      double[] reversed = {413, 12.29, 12.41, 12.34, 131.2, 262.4, 172.5};
      assertThat(SharedData.of(List.of(workbook("ada", DATA), workbook("ben", reversed))))
          .isEmpty();
    }

    @Test
    void numbersThatTheWholeClassIsGiven() {
      List<FileReport> all = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        all.add(workbook("student " + i, DATA));
      }
      assertThat(SharedData.of(all)).isEmpty();
    }

    @Test
    void aSmallPartOfManyReadings() {
      double[] many = new Random(5).doubles(40, 100, 999).toArray();
      double[] others = new Random(6).doubles(40, 100, 999).toArray();
      System.arraycopy(DATA, 0, many, 10, 7);
      System.arraycopy(DATA, 0, others, 20, 7);
      assertThat(SharedData.of(List.of(workbook("ada", many), workbook("ben", others)))).isEmpty();
    }

    @Test
    void chanceAmongStudentsWhoTimeTheSameWheel() {
      Random random = new Random(20261125);
      List<FileReport> all = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        all.add(random("student " + i, random, 20));
      }
      assertThat(SharedData.of(all)).isEmpty();
    }
  }

  @Test
  void restsOnWhatWasTypedInAndNotOnWhatWasCalculated(@TempDir Path folder) {
    Path file =
        Grid.sheet("Bench")
            .row("Quantity", "Value", "Unit", "Uncertainty", "Rationale")
            .row(
                "Wheel period",
                "=AVERAGE(H2:J2)",
                "s",
                0.2,
                "By hand.",
                null,
                null,
                12.31,
                12.44,
                12.2)
            .row("Crank arm", 172.5, "mm", 0.5, "Fine marks, two ends.")
            .row("Ratio", "=B3/B2", "mm/s", 0.1, "Calculated.", null, null, 77.7)
            .xlsx(folder.resolve("ada.xlsx"));

    assertThat(FileChecker.load().check(file).contents().rawData())
        .containsExactly(12.31, 12.44, 12.2, 172.5);
  }

  @Test
  void restsOnThePointsOfAGraphToo(@TempDir Path folder) {
    Path file =
        Grid.sheet("Lever")
            .row("Travel / mm", "Force / N", "two only")
            .row(2.11, 4.91, 8.01)
            .row(4.02, 9.82, 8.02)
            .row(6.23, 14.7, null)
            .row("k", "=(B4-B2)/(A4-A2)", 7.77)
            .xlsx(folder.resolve("ada.xlsx"));

    assertThat(FileChecker.load().check(file).contents().rawData())
        .containsExactly(2.11, 4.91, 4.02, 9.82, 6.23, 14.7);
  }
}
