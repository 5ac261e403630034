package tenthmark.checker.unit;

import java.util.Map;
import java.util.TreeMap;

/**
 * A unit as a product of base units: what formulas multiply, divide and take roots of. An angle has
 * no dimension here; a degree is π/180.
 *
 * @param factor how many of the product of base units it is
 * @param dimensions the exponents of the base units, without those that are zero
 */
public record Measure(double factor, Map<String, Double> dimensions) {

  /** The unit of a number. */
  public static final Measure ONE = new Measure(1, Map.of());

  private static final double SAME = 1e-9;

  /** Copies the map. */
  public Measure {
    dimensions = Map.copyOf(dimensions);
  }

  /** The product of two units. */
  public Measure times(Measure other) {
    Map<String, Double> product = new TreeMap<>(dimensions);
    other.dimensions.forEach((base, exponent) -> product.merge(base, exponent, Double::sum));
    product.values().removeIf(exponent -> Math.abs(exponent) < SAME);
    return new Measure(factor * other.factor, product);
  }

  /** A power of the unit; the exponent may be a fraction. */
  public Measure power(double exponent) {
    Map<String, Double> power = new TreeMap<>();
    dimensions.forEach((base, own) -> power.put(base, own * exponent));
    power.values().removeIf(own -> Math.abs(own) < SAME);
    return new Measure(Math.pow(factor, exponent), power);
  }

  /** Whether both measure the same kind of quantity. */
  public boolean isLike(Measure other) {
    return times(other.power(-1)).dimensions.isEmpty();
  }

  /** How many of a unit of the same kind one of this is. */
  public double over(Measure other) {
    return factor / other.factor;
  }
}
