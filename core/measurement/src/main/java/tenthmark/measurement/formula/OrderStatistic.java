package tenthmark.measurement.formula;

import java.util.Arrays;

/**
 * What stands at a position among the numbers in order, between two of them in proportion.
 *
 * @param name as a sentence calls it
 * @param position from 0 for the smallest to one less than how many there are
 */
record OrderStatistic(String name, double position) implements Aggregate {

  @Override
  public double value(double[] numbers) {
    double[] sorted = sorted(numbers);
    if (Double.isNaN(sorted[sorted.length - 1])) {
      return Double.NaN;
    }
    return share() == 0
        ? sorted[lower()]
        : sorted[lower()] + share() * (sorted[lower() + 1] - sorted[lower()]);
  }

  /** None where numbers that are equal could change places. */
  @Override
  public double slope(double[] numbers, int index) {
    double[] sorted = sorted(numbers);
    int lower = lower();
    int upper = share() == 0 ? lower : lower + 1;
    boolean tied =
        (lower > 0 && sorted[lower - 1] == sorted[lower])
            || (upper + 1 < sorted.length && sorted[upper] == sorted[upper + 1])
            || (lower != upper && sorted[lower] == sorted[upper]);
    if (tied) {
      return Double.NaN;
    }
    if (numbers[index] == sorted[lower]) {
      return 1 - share();
    }
    return numbers[index] == sorted[upper] ? share() : 0;
  }

  private int lower() {
    return (int) Math.floor(position);
  }

  private double share() {
    return position - lower();
  }

  private static double[] sorted(double[] numbers) {
    double[] sorted = numbers.clone();
    Arrays.sort(sorted);
    return sorted;
  }
}
