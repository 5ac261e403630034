package tenthmark.measurement.recording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import tenthmark.measurement.rounding.Decimals;

/** How several contributions make one total. */
public enum Combine {
  /** The sum of the sizes: an upper bound, the classroom default. */
  STRAIGHT {
    @Override
    public BigDecimal totalOf(List<BigDecimal> sizes) {
      return sizes.stream().map(BigDecimal::abs).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Override
    public double share(double size, double total) {
      return size / total;
    }
  },
  /** The root of the sum of squares, for independent contributions (JCGM 100:2008, 5.1.2). */
  QUADRATURE {
    @Override
    public BigDecimal totalOf(List<BigDecimal> sizes) {
      return sizes.stream()
          .map(size -> size.multiply(size))
          .reduce(BigDecimal.ZERO, BigDecimal::add)
          .sqrt(MathContext.DECIMAL128);
    }

    @Override
    public double share(double size, double total) {
      return (size / total) * (size / total);
    }
  };

  /**
   * The total of the sizes, in their unit; zero for none. Decimal, so that 0.1 and 0.2 make 0.3 and
   * squares of very large or small sizes do not leave the range of a double.
   */
  public abstract BigDecimal totalOf(List<BigDecimal> sizes);

  /** The part of a total, greater than zero, that a size makes up, between 0 and 1. */
  public abstract double share(double size, double total);

  /** The total of the sizes, in their unit; zero for none, infinite beyond the largest double. */
  public double total(List<Double> sizes) {
    return totalOf(sizes.stream().map(Decimals::shortest).toList()).doubleValue();
  }
}
