package tenthmark.measurement.formula;

import java.util.Arrays;

/** A function of any number of numbers that cannot be made of functions of two without loss. */
public enum Aggregate {
  SUM {
    @Override
    double value(double[] numbers) {
      return CalcArithmetic.sum(numbers);
    }

    @Override
    double slope(double[] numbers, int index) {
      return 1;
    }
  },
  MEDIAN {
    @Override
    double value(double[] numbers) {
      double[] sorted = numbers.clone();
      Arrays.sort(sorted);
      if (Double.isNaN(sorted[sorted.length - 1])) {
        return Double.NaN;
      }
      int half = sorted.length / 2;
      return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    @Override
    double slope(double[] numbers, int index) {
      double[] sorted = numbers.clone();
      Arrays.sort(sorted);
      int upper = sorted.length / 2;
      int lower = (sorted.length - 1) / 2;
      boolean tied =
          (lower > 0 && sorted[lower - 1] == sorted[lower])
              || (upper + 1 < sorted.length && sorted[upper] == sorted[upper + 1])
              || (lower != upper && sorted[lower] == sorted[upper]);
      if (tied) {
        return Double.NaN;
      }
      boolean middle = numbers[index] == sorted[lower] || numbers[index] == sorted[upper];
      return middle ? 1.0 / (upper - lower + 1) : 0;
    }
  };

  abstract double value(double[] numbers);

  abstract double slope(double[] numbers, int index);
}
