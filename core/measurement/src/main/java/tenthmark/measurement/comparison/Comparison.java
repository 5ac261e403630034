package tenthmark.measurement.comparison;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.rounding.Written;
import tenthmark.measurement.wording.Sentences;

/**
 * Two values of one quantity, each with its uncertainty, set against each other. Decimal, so that
 * 1.1 ± 0.1 and 0.9 ± 0.1 just agree, and to the digits by which numbers are {@link Written}, so
 * that they do where a calculation has given them.
 *
 * @param difference between the values, zero or greater
 * @param allowed the difference that the uncertainties allow, in the same unit; zero only if the
 *     values are equal
 */
public record Comparison(BigDecimal difference, BigDecimal allowed) {

  private static final int DIGITS_SHOWN = 4;

  /** Refuses different values that are both without uncertainty. */
  public Comparison {
    if (allowed.signum() == 0 && difference.signum() != 0) {
      throw new IllegalArgumentException("different values without uncertainty");
    }
  }

  /**
   * Compares v1 ± u1 with v2 ± u2.
   *
   * @param combine straight allows u1 + u2, so that the intervals touch; quadrature allows the root
   *     of the sum of their squares
   */
  public static Comparison of(double v1, double u1, double v2, double u2, Combine combine) {
    return new Comparison(
        Decimals.shortest(v1).subtract(Decimals.shortest(v2)).abs(),
        combine.totalOf(List.of(Decimals.shortest(u1), Decimals.shortest(u2))));
  }

  /** The difference over the allowed difference; 0 for equal values. */
  public BigDecimal gap() {
    if (difference.signum() == 0) {
      return BigDecimal.ZERO;
    }
    return judged() == 0 ? BigDecimal.ONE : difference.divide(allowed, MathContext.DECIMAL128);
  }

  /** Whether the difference is no larger than allowed. */
  public boolean agrees() {
    return judged() <= 0;
  }

  private int judged() {
    return Written.of(difference).compareTo(Written.of(allowed));
  }

  /** The sentence that says whether the values agree and by how much they differ. */
  public String inWords(Sentences sentences) {
    return difference.signum() == 0
        ? sentences.say("agreement.equal")
        : sentences.say(
            agrees() ? "agreement.within" : "agreement.beyond",
            shown(difference, sentences),
            shown(gap(), sentences),
            shown(allowed, sentences));
  }

  private static String shown(BigDecimal number, Sentences sentences) {
    return PowerOfTen.show(number, DIGITS_SHOWN, sentences.decimalSign());
  }
}
