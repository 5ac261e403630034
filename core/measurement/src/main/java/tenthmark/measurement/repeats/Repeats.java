package tenthmark.measurement.repeats;

import java.math.BigDecimal;
import java.util.List;
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

  private double rootOfVarianceOver(int divisor) {
    // Differences from the first value are nearly exact, and the power of two that is taken out
    // keeps their squares within the range of a double.
    int exponent = values.stream().mapToInt(value -> Math.getExponent(value)).max().orElseThrow();
    double first = Math.scalb(values.get(0), -exponent);
    double[] differences =
        values.stream().mapToDouble(value -> Math.scalb(value, -exponent) - first).toArray();
    return Math.scalb(Math.sqrt(StatUtils.variance(differences) / divisor), exponent);
  }

  /** Half the distance between the largest and the smallest reading. Common practice, no source. */
  public double halfRange() {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return Decimals.shortest(sorted[sorted.length - 1])
        .subtract(Decimals.shortest(sorted[0]))
        .divide(BigDecimal.valueOf(2))
        .doubleValue();
  }
}
