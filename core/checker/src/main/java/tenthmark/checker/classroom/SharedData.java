package tenthmark.checker.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
 * @param count how many numbers are equal
 * @param numbers the first {@value #SHOWN} of them at most, in their order
 */
public record SharedData(Path one, Path other, int count, List<Double> numbers) {

  /** The fewest significant digits of a number that counts. */
  public static final int DIGITS = 3;

  /** The fewest different numbers that two workbooks share. */
  public static final int LEAST = 6;

  /** In so many workbooks a number may stand whatever the size of the class. */
  public static final int FEW = 3;

  /** So many numbers show what is meant; a logger writes down thousands. */
  public static final int SHOWN = 50;

  /** Copies the numbers. */
  public SharedData {
    numbers = List.copyOf(numbers);
  }

  /** All pairs in a class, in its order. */
  public static List<SharedData> of(List<FileReport> reports) {
    Holders holders = Holders.of(reports);
    double[][] counted = new double[reports.size()][];
    List<SharedData> pairs = new ArrayList<>();
    for (int other = 0; other < reports.size(); other++) {
      for (int one : holders.before(other)) {
        for (int workbook : new int[] {one, other}) {
          if (counted[workbook] == null) {
            counted[workbook] = counted(reports.get(workbook), holders);
          }
        }
        double[] equal = CommonSequence.of(counted[one], counted[other]);
        int fewer = Math.min(counted[one].length, counted[other].length);
        if (isEnough(equal.length, fewer) && Arrays.stream(equal).distinct().count() >= LEAST) {
          pairs.add(pair(reports.get(one), reports.get(other), equal));
        }
      }
    }
    return pairs;
  }

  private static SharedData pair(FileReport one, FileReport other, double[] equal) {
    List<Double> first = Arrays.stream(equal).limit(SHOWN).boxed().toList();
    return new SharedData(one.file(), other.file(), equal.length, first);
  }

  private static double[] counted(FileReport report, Holders holders) {
    return report.contents().rawData().stream()
        .mapToDouble(Double::doubleValue)
        .filter(number -> counts(number) && !holders.isGiven(number))
        .toArray();
  }

  /** Whether a number has enough digits. */
  static boolean counts(double number) {
    return Decimals.shortest(number).stripTrailingZeros().precision() >= DIGITS;
  }

  /** Whether so many equal numbers are enough of those of the workbook that has fewer. */
  static boolean isEnough(int equal, int fewer) {
    return 2L * equal >= fewer;
  }

  /** Whether a number in so many workbooks of a class is given to it. */
  static boolean isGiven(int holders, int workbooks) {
    return holders > FEW && 4 * holders > workbooks;
  }
}
