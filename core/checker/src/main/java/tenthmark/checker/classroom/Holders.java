package tenthmark.checker.classroom;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import tenthmark.checker.report.FileReport;

/**
 * Which workbooks of a class hold which numbers. The numbers are looked at part by part, each small
 * enough for the memory, so that a class may hold millions.
 */
final class Holders {

  private static final int PART = 1 << 17;

  private final List<FileReport> reports;

  /** Of each workbook how many different numbers it shares with each one before it. */
  private final int[][] different;

  /** The same, each number as often as both hold it. */
  private final int[][] shared;

  /** Of each workbook how many numbers count. */
  private final int[] counted;

  /** Sorted. */
  private double[] given = {};

  private Holders(List<FileReport> reports) {
    this.reports = reports;
    this.different = new int[reports.size()][];
    this.shared = new int[reports.size()][];
    this.counted = new int[reports.size()];
    Arrays.setAll(different, int[]::new);
    Arrays.setAll(shared, int[]::new);
  }

  static Holders of(List<FileReport> reports) {
    Holders holders = new Holders(reports);
    long all = reports.stream().mapToLong(report -> report.contents().rawData().size()).sum();
    int parts = Math.toIntExact(all / PART + 1);
    DoubleStream.Builder given = DoubleStream.builder();
    IntStream.range(0, parts).forEach(part -> holders.read(part, parts, given));
    holders.given = given.build().sorted().toArray();
    return holders;
  }

  private void read(int part, int parts, DoubleStream.Builder given) {
    Map<Double, Map<Integer, Integer>> holders = new HashMap<>();
    for (int workbook = 0; workbook < reports.size(); workbook++) {
      for (double number : reports.get(workbook).contents().rawData()) {
        if (Math.floorMod(Double.hashCode(number) * 0x9E3779B1, parts) == part) {
          holders
              .computeIfAbsent(number, missing -> new HashMap<>(2))
              .merge(workbook, 1, Integer::sum);
        }
      }
    }
    holders.keySet().removeIf(number -> !SharedData.counts(number));
    holders.forEach(
        (number, times) -> {
          if (SharedData.isGiven(times.size(), reports.size())) {
            given.add(number);
          } else {
            count(times);
          }
        });
  }

  private void count(Map<Integer, Integer> times) {
    times.forEach(
        (other, timesInOther) -> {
          counted[other] += timesInOther;
          times.forEach(
              (one, timesInOne) -> {
                if (one < other) {
                  different[other][one]++;
                  shared[other][one] += Math.min(timesInOne, timesInOther);
                }
              });
        });
  }

  /** Whether so many workbooks hold a number that it is given to the class. */
  boolean isGiven(double number) {
    return Arrays.binarySearch(given, number) >= 0;
  }

  /** The workbooks before one that share enough numbers with it, in whatever order. */
  int[] before(int workbook) {
    return IntStream.range(0, workbook)
        .filter(one -> different[workbook][one] >= SharedData.LEAST)
        .filter(
            one ->
                SharedData.isEnough(
                    shared[workbook][one], Math.min(counted[workbook], counted[one])))
        .toArray();
  }
}
