package tenthmark.checker.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Stream;
import tenthmark.measurement.rounding.Decimals;

/**
 * That a course states uncertainties times a coverage factor (JCGM 100:2008, 6.2.1).
 *
 * @param factor 1 where it does not
 */
record Expansion(double factor) {

  private static final MathContext AS_STATED = new MathContext(2);

  /** What may be stated where this size follows from its parts. */
  Stream<Double> sizes(double size) {
    return factor == 1 ? Stream.of(size) : Stream.of(size, factor * size);
  }

  /**
   * Whether an uncertainty is the expanded one of this size. A factor is stated with two digits:
   * who multiplies by 1.96 has the 2.0 of the course.
   */
  boolean isOf(double size, double uncertainty) {
    return factor != 1 && size > 0 && rounded(uncertainty / size).compareTo(rounded(factor)) == 0;
  }

  private static BigDecimal rounded(double number) {
    return Decimals.shortest(number).round(AS_STATED);
  }
}
