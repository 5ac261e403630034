package tenthmark.measurement.repeats;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hipparchus.stat.StatUtils;
import tenthmark.measurement.rounding.Decimals;

/**
 * Readings of one quantity, repeated under the same conditions.
 *
 * @param values at least two, in one unit
 */
public record Repeats(List<Double> values) {

  /** Copies the values. */
  public Repeats {
    values = List.copyOf(values);
  }

  /** How many readings there are. */
  public int count() {
    return values.size();
  }

  /**
   * The experimental standard deviation of one reading, with n - 1 (JCGM 100:2008, 4.2.2), in the
   * unit of the values.
   */
  public double standardDeviation() {
    return rootOfVarianceOver(1);
  }

  /** The experimental standard deviation of the mean, s/sqrt(n) (JCGM 100:2008, 4.2.3). */
  public double standardDeviationOfMean() {
    return rootOfVarianceOver(count());
  }

  /** Half the distance between the largest and the smallest reading. Common practice, no source. */
  public double halfRange() {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return Decimals.shortest(sorted[sorted.length - 1])
        .subtract(Decimals.shortest(sorted[0]))
        .divide(BigDecimal.valueOf(2))
        .doubleValue();
  }

  /**
   * How far each reading lies above the mean, (value - mean) in standard deviations of the
   * readings, in their order; negative below it, zero if all are equal.
   */
  public List<Double> scores() {
    double[] differences = scaledDifferences();
    double mean = StatUtils.mean(differences);
    double deviation = Math.sqrt(StatUtils.variance(differences));
    return DoubleStream.of(differences)
        .map(difference -> deviation == 0 ? 0 : (difference - mean) / deviation)
        .boxed()
        .toList();
  }

  private double rootOfVarianceOver(int divisor) {
    double variance = StatUtils.variance(scaledDifferences());
    return Math.scalb(Math.sqrt(variance / divisor), exponent());
  }

  /**
   * The differences from the first value, which are nearly exact, over a power of two that keeps
   * their squares within the range of a double.
   */
  private double[] scaledDifferences() {
    int exponent = exponent();
    double first = Math.scalb(values.get(0), -exponent);
    return values.stream().mapToDouble(value -> Math.scalb(value, -exponent) - first).toArray();
  }

  private int exponent() {
    return values.stream().mapToInt(value -> Math.getExponent(value)).max().orElseThrow();
  }
}
