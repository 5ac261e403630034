package tenthmark.measurement.coverage;

import java.util.List;

/**
 * The Welch-Satterthwaite formula (JCGM 100:2008, G.4.1): the degrees of freedom of a combined
 * standard uncertainty, (sum of u²)² over the sum of u⁴/freedom.
 */
public final class EffectiveFreedom {

  private EffectiveFreedom() {}

  /**
   * One contribution to the combined standard uncertainty.
   *
   * @param size its standard uncertainty times the sensitivity coefficient; the sign has no effect
   * @param freedom its degrees of freedom, greater than zero; may be infinite
   */
  public record Contribution(double size, double freedom) {}

  /** The effective degrees of freedom; infinite if every contribution's is. */
  public static double of(List<Contribution> contributions) {
    double largest =
        contributions.stream().mapToDouble(c -> Math.abs(c.size())).max().orElseThrow();
    double squares = 0;
    double fourths = 0;
    for (Contribution contribution : contributions) {
      double square = Math.pow(contribution.size() / largest, 2);
      squares += square;
      fourths += square * square / contribution.freedom();
    }
    return squares * squares / fourths;
  }
}
