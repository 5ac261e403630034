package tenthmark.measurement.recording;

import java.util.List;

/** How several contributions make one total. */
public enum Combine {
  /** The sum of the sizes: an upper bound, the classroom default. */
  STRAIGHT {
    @Override
    public double total(List<Double> sizes) {
      return sizes.stream().mapToDouble(Math::abs).sum();
    }
  },
  /** The root of the sum of squares, for independent contributions (JCGM 100:2008, 5.1.2). */
  QUADRATURE {
    @Override
    public double total(List<Double> sizes) {
      return sizes.stream().mapToDouble(Double::doubleValue).reduce(0, Math::hypot);
    }
  };

  /** The total of the sizes, in their unit; zero for none. */
  public abstract double total(List<Double> sizes);
}
