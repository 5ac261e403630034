package tenthmark.checker.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.collections4.ListUtils;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommonSequenceTest {

  private static final int ROWS = 60_000;

  private static List<Double> list(double[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }

  private static boolean isWithin(double[] part, double[] whole) {
    int next = 0;
    for (double number : whole) {
      next += next < part.length && part[next] == number ? 1 : 0;
    }
    return next == part.length;
  }

  /** The library's longest common subsequence is of Myers (Algorithmica 1, 1986, 251). */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 10, 100})
  void isAsLongAsTheLongestThatTheCommonsCollectionsFind(int kinds) {
    Random random = new Random(20261201);
    for (int i = 0; i < 200; i++) {
      double[] one = random.ints(random.nextInt(50), 0, kinds).asDoubleStream().toArray();
      double[] other = random.ints(random.nextInt(50), 0, kinds).asDoubleStream().toArray();

      double[] common = CommonSequence.of(one, other);

      assertThat(common)
          .hasSize(ListUtils.longestCommonSubsequence(list(one), list(other)).size())
          .satisfies(found -> assertThat(isWithin(found, one) && isWithin(found, other)).isTrue());
    }
  }

  /** Columns of a logger: invented temperatures that drift, to a tenth or a thousandth. */
  @Nested
  class OfLongColumns {

    private double[] drift(long seed, double steps) {
      Random random = new Random(seed);
      double[] column = new double[ROWS];
      double now = 20;
      for (int i = 0; i < ROWS; i++) {
        now += random.nextGaussian() / 20;
        column[i] = Math.round(now * steps) / steps;
      }
      return column;
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 1000})
    void leavesOutRowsThatWereChangedOrTakenAway(double steps) {
      double[] one = drift(1, steps);
      double[] other =
          IntStream.range(0, ROWS)
              .filter(row -> row % 1000 != 500)
              .mapToDouble(row -> row % 1000 == 0 ? -1 : one[row])
              .toArray();

      double[] common = CommonSequence.of(one, other);

      assertThat(isWithin(common, one) && isWithin(common, other)).isTrue();
      assertThat(common).hasSizeBetween(ROWS - 5 * 120, ROWS - 120);
    }

    @Test
    void ofSensorsThatStandStill() {
      double[] one = new double[ROWS];
      Arrays.fill(one, 21.5);
      one[30_000] = 21.6;
      double[] other = one.clone();
      other[0] = 1;
      other[ROWS - 1] = 2;

      assertThat(CommonSequence.of(one, other)).hasSizeBetween(ROWS - 10, ROWS - 2);
    }

    @Test
    void ofAPatternThatRepeats() {
      double[] one = IntStream.range(0, ROWS).mapToDouble(row -> row % 7).toArray();
      double[] other = IntStream.range(0, ROWS).mapToDouble(row -> (row + 3) % 7).toArray();

      double[] common = CommonSequence.of(one, other);

      assertThat(isWithin(common, one) && isWithin(common, other)).isTrue();
      assertThat(common).hasSizeGreaterThan(ROWS - 100);
    }

    @Test
    void isLittleBetweenColumnsOfTwoLoggers() {
      assertThat(CommonSequence.of(drift(1, 1000), drift(2, 1000))).hasSizeLessThan(ROWS / 2);
    }
  }
}
