package tenthmark.checker.classroom;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What two sequences of numbers have in common, in their order. Where numbers seldom repeat it is a
 * longest common subsequence (the method of Hunt and Szymanski, Communications of the ACM 20, 1977,
 * 350). Where they repeat so often that it would cost the product of the lengths, as in the column
 * of a logger, only runs of {@value #RUN} numbers are compared, and those that repeat in the order
 * in which they repeat: what is found is common to both, though not always the most that is. Memory
 * is linear in the lengths, time nearly so.
 */
final class CommonSequence {

  private static final int RUN = 8;

  /** So many matches per number are few. */
  private static final int FEW = 4;

  /** So many matches cost nothing, however short the sequences. */
  private static final int FREE = 1 << 16;

  private final double[] one;
  private final double[] other;

  private CommonSequence(double[] one, double[] other) {
    this.one = one;
    this.other = other;
  }

  /** The numbers that both have, in their order. */
  static double[] of(double[] one, double[] other) {
    int least = Math.min(one.length, other.length);
    int head = Arrays.mismatch(one, other);
    if (head < 0) {
      return one.clone();
    }
    int tail = 0;
    while (tail < least - head
        && same(one[one.length - 1 - tail], other[other.length - 1 - tail])) {
      tail++;
    }
    double[] middle =
        new CommonSequence(
                Arrays.copyOfRange(one, head, one.length - tail),
                Arrays.copyOfRange(other, head, other.length - tail))
            .between();
    double[] common = Arrays.copyOf(one, head + middle.length + tail);
    System.arraycopy(middle, 0, common, head, middle.length);
    System.arraycopy(one, one.length - tail, common, head + middle.length, tail);
    return common;
  }

  private static boolean same(double one, double other) {
    return Double.compare(one, other) == 0;
  }

  private double[] between() {
    Matches single = Matches.of(runs(one, 1), runs(other, 1));
    long few = FREE + (long) FEW * (one.length + other.length);
    return single.all() <= few
        ? joined(single.chain(false), 1)
        : joined(Matches.of(runs(one, RUN), runs(other, RUN)).chain(true), RUN);
  }

  /** A hash of each run of so many numbers, by the place where it begins. */
  private static long[] runs(double[] numbers, int length) {
    return IntStream.rangeClosed(0, numbers.length - length)
        .mapToLong(
            begin -> {
              long hash = 0;
              for (int i = begin; i < begin + length; i++) {
                hash = hash * 0x9E3779B97F4A7C15L + Double.doubleToLongBits(numbers[i]);
              }
              return hash;
            })
        .toArray();
  }

  /** The numbers of runs that follow each other in both; runs may overlap. */
  private double[] joined(int[][] chain, int length) {
    double[] common = new double[Math.min(one.length, other.length)];
    int count = 0;
    int nextOne = 0;
    int nextOther = 0;
    for (int[] begin : chain) {
      for (int i = 0; i < length; i++) {
        int atOne = begin[0] + i;
        int atOther = begin[1] + i;
        // Two runs may have one hash.
        if (atOne >= nextOne && atOther >= nextOther && same(one[atOne], other[atOther])) {
          common[count++] = one[atOne];
          nextOne = atOne + 1;
          nextOther = atOther + 1;
        }
      }
    }
    return Arrays.copyOf(common, count);
  }
}
