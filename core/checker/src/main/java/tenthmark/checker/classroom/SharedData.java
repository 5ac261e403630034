package tenthmark.checker.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tenthmark.checker.report.FileReport;
import tenthmark.measurement.rounding.Decimals;

/**
 * Two workbooks with the same raw data. Counted are typed-in numbers with at least {@value #DIGITS}
 * significant digits that few others hold: a number in more than {@value #FEW} workbooks and in
 * more than a quarter of the class is a given one. Two workbooks have the same raw data if at least
 * {@value #LEAST} different numbers are equal in both, in the same order, and they are at least
 * half of those of the workbook that has fewer.
 *
 * @param one the first in the order of the class
 * @param other the second
 * @param numbers those that are equal, in their order
 */
public record SharedData(Path one, Path other, List<Double> numbers) {

  /** The fewest significant digits of a number that counts. */
  public static final int DIGITS = 3;

  /** The fewest different numbers that two workbooks share. */
  public static final int LEAST = 6;

  /** In so many workbooks a number may stand whatever the size of the class. */
  public static final int FEW = 3;

  /** Copies the numbers. */
  public SharedData {
    numbers = List.copyOf(numbers);
  }

  private record Workbook(Path file, List<Double> numbers) {}

  /** All pairs in a class, in its order. */
  public static List<SharedData> of(List<FileReport> reports) {
    List<Workbook> workbooks = withoutGiven(reports.stream().map(SharedData::counted).toList());
    List<SharedData> pairs = new ArrayList<>();
    for (int other = 0; other < workbooks.size(); other++) {
      for (int one : candidates(workbooks, other)) {
        List<Double> equal = inOrder(workbooks.get(one).numbers(), workbooks.get(other).numbers());
        int fewer =
            Math.min(workbooks.get(one).numbers().size(), workbooks.get(other).numbers().size());
        if (new HashSet<>(equal).size() >= LEAST && 2 * equal.size() >= fewer) {
          pairs.add(new SharedData(workbooks.get(one).file(), workbooks.get(other).file(), equal));
        }
      }
    }
    return pairs;
  }

  private static Workbook counted(FileReport report) {
    return new Workbook(
        report.file(),
        report.contents().rawData().stream().filter(SharedData::hasEnoughDigits).toList());
  }

  private static boolean hasEnoughDigits(double number) {
    return Decimals.shortest(number).stripTrailingZeros().precision() >= DIGITS;
  }

  private static List<Workbook> withoutGiven(List<Workbook> workbooks) {
    Map<Double, Integer> holders = new HashMap<>();
    for (Workbook workbook : workbooks) {
      new HashSet<>(workbook.numbers()).forEach(n -> holders.merge(n, 1, Integer::sum));
    }
    return workbooks.stream()
        .map(
            workbook ->
                new Workbook(
                    workbook.file(),
                    workbook.numbers().stream()
                        .filter(number -> !isGiven(holders.get(number), workbooks.size()))
                        .toList()))
        .toList();
  }

  private static boolean isGiven(int holders, int workbooks) {
    return holders > FEW && 4 * holders > workbooks;
  }

  /** The earlier workbooks that share enough different numbers in whatever order. */
  private static Collection<Integer> candidates(List<Workbook> workbooks, int other) {
    Set<Double> numbers = new HashSet<>(workbooks.get(other).numbers());
    Set<Integer> candidates = new TreeSet<>();
    for (int one = 0; one < other; one++) {
      long shared =
          workbooks.get(one).numbers().stream().distinct().filter(numbers::contains).count();
      if (shared >= LEAST) {
        candidates.add(one);
      }
    }
    return candidates;
  }

  /** The longest common subsequence. */
  private static List<Double> inOrder(List<Double> one, List<Double> other) {
    int[][] longest = new int[one.size() + 1][other.size() + 1];
    for (int i = one.size() - 1; i >= 0; i--) {
      for (int j = other.size() - 1; j >= 0; j--) {
        longest[i][j] =
            one.get(i).equals(other.get(j))
                ? longest[i + 1][j + 1] + 1
                : Math.max(longest[i + 1][j], longest[i][j + 1]);
      }
    }
    List<Double> equal = new ArrayList<>();
    for (int i = 0, j = 0; i < one.size() && j < other.size(); ) {
      if (one.get(i).equals(other.get(j))) {
        equal.add(one.get(i));
        i++;
        j++;
      } else if (longest[i + 1][j] >= longest[i][j + 1]) {
        i++;
      } else {
        j++;
      }
    }
    return equal;
  }
}
