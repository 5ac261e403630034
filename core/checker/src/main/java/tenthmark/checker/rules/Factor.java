package tenthmark.checker.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.measurement.wording.Message;

/**
 * A factor by which numbers come out wrong when a decimal point or a unit slips: powers of ten,
 * what minutes and hours have, a half for a radius, 2 pi for a turn, and what a degree has.
 *
 * @param size greater than zero, not one
 */
record Factor(double size) {

  private static final int MOST_PLACES = 6;

  private static final List<Factor> ALL =
      Stream.concat(
              IntStream.rangeClosed(1, MOST_PLACES).mapToObj(places -> Math.pow(10, places)),
              Stream.of(60.0, 3600.0, 2 * Math.PI, 180 / Math.PI, 2.0))
          .flatMap(size -> Stream.of(new Factor(size), new Factor(1 / size)))
          .toList();

  /** The powers of ten alone. */
  private static final List<Factor> DECIMAL =
      ALL.stream().filter(factor -> factor.isPowerOfTen()).toList();

  /** The factor without which a number would be right. */
  static Optional<Factor> explaining(double number, DoublePredicate isRight) {
    return first(ALL, number, isRight);
  }

  /** The power of ten without which a number would be right. */
  static Optional<Factor> decimal(double number, DoublePredicate isRight) {
    return first(DECIMAL, number, isRight);
  }

  private static Optional<Factor> first(
      List<Factor> factors, double number, DoublePredicate isRight) {
    return factors.stream().filter(factor -> isRight.test(number / factor.size)).findFirst();
  }

  private boolean isPowerOfTen() {
    double places = Math.log10(size);
    return Math.abs(places - Math.rint(places)) < 1e-9;
  }

  /** As a sentence says it. */
  Message shown() {
    boolean larger = size > 1;
    double number = larger ? size : 1 / size;
    boolean whole =
        DoubleStream.of(2, 60, 3600).anyMatch(known -> known == number) || isPowerOfTen();
    Message figure =
        whole
            ? Numbers.show(Math.rint(number))
            : Message.of(number < 10 ? "factor.turn" : "factor.degree");
    return Message.of(larger ? "factor.larger" : "factor.smaller", figure);
  }
}
