package tenthmark.measurement.carrying;

import java.util.Arrays;

/** The root of the sum of squares, for independent inputs (JCGM 100:2008, 5.1.2, equation 10). */
public record Quadrature() implements Combination {

  @Override
  public double total(double[] contributions) {
    double total = 0;
    for (double contribution : contributions) {
      total = Math.hypot(total, contribution);
    }
    return total;
  }

  @Override
  public double[] shares(double[] contributions) {
    double total = total(contributions);
    return Arrays.stream(contributions).map(size -> (size / total) * (size / total)).toArray();
  }
}
