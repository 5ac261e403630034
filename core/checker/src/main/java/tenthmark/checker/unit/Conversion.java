package tenthmark.checker.unit;

import javax.measure.UnitConverter;

/** How numbers in one unit become numbers in another of the same dimension. */
public final class Conversion {

  private final UnitConverter converter;

  Conversion(UnitConverter converter) {
    this.converter = converter;
  }

  /** A value, with the offset that a temperature scale has. */
  public double value(double number) {
    return converter.convert(number);
  }

  /**
   * A difference, such as an uncertainty or a division, without any offset: 0.5 °C is 0.5 K.
   *
   * @return of the same sign as {@code number}
   */
  public double difference(double number) {
    return converter.isLinear()
        ? converter.convert(number)
        : number * (converter.convert(1.0) - converter.convert(0.0));
  }

  /** Whether every number stays as it is. */
  public boolean isIdentity() {
    return value(0) == 0 && value(1) == 1;
  }
}
