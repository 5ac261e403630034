package tenthmark.measurement.carrying;

import java.util.Arrays;

/** The sum of the sizes: an upper bound, the classroom default. Common practice, no source. */
public record Straight() implements Combination {

  @Override
  public double total(double[] contributions) {
    double total = 0;
    for (double contribution : contributions) {
      total += Math.abs(contribution);
    }
    return total;
  }

  @Override
  public double[] shares(double[] contributions) {
    double total = total(contributions);
    return Arrays.stream(contributions).map(size -> Math.abs(size) / total).toArray();
  }
}
