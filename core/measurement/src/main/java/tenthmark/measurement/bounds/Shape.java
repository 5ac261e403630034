package tenthmark.measurement.bounds;

/** How probable the values between the bounds -a and +a of a quantity are. */
public enum Shape {
  /** All equally: u = a/sqrt(3) (JCGM 100:2008, 4.3.7). */
  RECTANGULAR(Math.sqrt(3)),
  /** Most in the middle, falling evenly to none at the bounds: u = a/sqrt(6) (4.3.9). */
  TRIANGULAR(Math.sqrt(6)),
  /** Most at the bounds, as of a sine oscillation: u = a/sqrt(2) (H.1.3.4, cyclic temperature). */
  ARCSINE(Math.sqrt(2)),
  /** Normal, the bounds taken as a 95 % interval: u = a/1.96 (4.3.4). */
  NORMAL(1.96);

  private final double divisor;

  Shape(double divisor) {
    this.divisor = divisor;
  }

  /** The standard uncertainty u for the half-width a, in its unit. */
  public double standardUncertainty(double halfWidth) {
    return halfWidth / divisor;
  }
}
