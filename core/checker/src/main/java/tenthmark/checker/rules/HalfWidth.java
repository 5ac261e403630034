package tenthmark.checker.rules;

import java.util.stream.Stream;
import tenthmark.measurement.bounds.Shape;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;

/**
 * The half-width of an interval within which a quantity lies.
 *
 * @param size zero or greater
 */
record HalfWidth(double size) {

  /**
   * Whether a contribution is the half-width or, where a course combines standard uncertainties,
   * the standard uncertainty that follows from it (JCGM 100:2008, 4.3.7 and 4.3.9).
   */
  boolean agrees(double contribution, Convention convention) {
    return contributions(convention)
        .anyMatch(right -> Numbers.agreesAsWritten(contribution, right));
  }

  /** The contributions that state it under a convention, itself first. */
  Stream<Double> contributions(Convention convention) {
    return Stream.concat(
        Stream.of(size),
        convention.combine() == Combine.QUADRATURE
            ? Stream.of(Shape.TRIANGULAR, Shape.RECTANGULAR)
                .map(shape -> shape.standardUncertainty(size))
            : Stream.empty());
  }
}
