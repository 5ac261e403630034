package tenthmark.measurement.rounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a calculation in doubles gives is rounded as the same calculation by hand, in exact decimals
 * (java.math.BigDecimal), would be.
 */
class WrittenTest {

  /** A calculation with two measured numbers, in doubles as a cell does it and exactly. */
  enum Calculation {
    DIFFERENCE((x, y) -> x - y) {
      @Override
      BigDecimal exact(BigDecimal x, BigDecimal y) {
        return x.subtract(y);
      }
    },
    HALF_THE_RANGE((x, y) -> (x - y) / 2) {
      @Override
      BigDecimal exact(BigDecimal x, BigDecimal y) {
        return x.subtract(y).divide(BigDecimal.valueOf(2));
      }
    },
    MEAN((x, y) -> (x + y) / 2) {
      @Override
      BigDecimal exact(BigDecimal x, BigDecimal y) {
        return x.add(y).divide(BigDecimal.valueOf(2));
      }
    },
    PRODUCT((x, y) -> x * y) {
      @Override
      BigDecimal exact(BigDecimal x, BigDecimal y) {
        return x.multiply(y);
      }
    };

    private final DoubleBinaryOperator inDoubles;

    Calculation(DoubleBinaryOperator inDoubles) {
      this.inDoubles = inDoubles;
    }

    abstract BigDecimal exact(BigDecimal x, BigDecimal y);
  }

  private static void requireHandRounding(Calculation calculation, BigDecimal x, BigDecimal y) {
    BigDecimal exact = calculation.exact(x, y).abs().stripTrailingZeros();
    if (exact.signum() == 0 || exact.precision() < 2) {
      return;
    }
    double computed =
        Math.abs(calculation.inDoubles.applyAsDouble(x.doubleValue(), y.doubleValue()));
    BigDecimal found = Decimals.shortest(computed);
    int digits = exact.precision() - 1;
    BigDecimal up = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
    if (new DigitsRule.Fixed(digits).round(found).compareTo(up) != 0) {
      throw new AssertionError(calculation + " of " + x + " and " + y + ": " + computed);
    }
    int decimals = exact.scale() - 1;
    BigDecimal even = exact.setScale(decimals, RoundingMode.HALF_EVEN);
    if (Written.toDecimals(found, decimals, RoundingMode.HALF_EVEN).compareTo(even) != 0) {
      throw new AssertionError("value, " + calculation + " of " + x + " and " + y);
    }
    BigDecimal bench = new DigitsRule.Bench().round(exact);
    if (new DigitsRule.Bench().round(found).compareTo(bench) != 0) {
      throw new AssertionError("bench, " + calculation + " of " + x + " and " + y);
    }
  }

  @Nested
  class CalculatedNumbers {

    /** Each loses a last digit, which in a tenth of the cases is a 5: a tie. */
    @ParameterizedTest
    @EnumSource
    void ofTenthsAreRoundedAsByHand(Calculation calculation) {
      for (int x = 1; x < 1000; x += 7) {
        for (int y = 1; y < 1000; y++) {
          requireHandRounding(calculation, BigDecimal.valueOf(x, 1), BigDecimal.valueOf(y, 1));
        }
      }
    }

    /**
     * The ties among all numbers of three digits with up to three decimals, the two with the same
     * number of them: the others are nowhere near one.
     */
    @ParameterizedTest
    @EnumSource
    @Tag("slow")
    void ofAllShortDecimalsAreRoundedAsByHand(Calculation calculation) {
      for (int decimals = 1; decimals <= 3; decimals++) {
        for (int x = 1; x < 1000; x++) {
          for (int y = 1; y < 1000; y++) {
            BigDecimal first = BigDecimal.valueOf(x, decimals);
            BigDecimal second = BigDecimal.valueOf(y, decimals);
            if (isTie(calculation.exact(first, second))) {
              requireHandRounding(calculation, first, second);
            }
          }
        }
      }
    }

    private boolean isTie(BigDecimal exact) {
      return exact.stripTrailingZeros().unscaledValue().mod(BigInteger.TEN).intValue() == 5;
    }

    @ParameterizedTest
    @EnumSource
    void ofDifferentDecimalsAreRoundedAsByHand(Calculation calculation) {
      Random random = new Random(3);
      for (int i = 0; i < 100_000; i++) {
        requireHandRounding(
            calculation,
            BigDecimal.valueOf(1 + random.nextInt(999), random.nextInt(4)),
            BigDecimal.valueOf(1 + random.nextInt(999), random.nextInt(4)));
      }
    }

    /** By hand. */
    @ParameterizedTest
    @CsvSource({"0.7, 0.5, 0.2", "0.4, 0.1, 0.3", "1.2, 1, 0.2", "100.3, 100.1, 0.2"})
    void haveTheFirstDigitThatTheyHaveByHand(double x, double y, String rounded) {
      assertThat(new DigitsRule.Bench().round(Decimals.shortest(x - y)))
          .isEqualTo(new BigDecimal(rounded));
    }

    @Test
    void areShownWithoutWhatTheComputerAdds() {
      assertThat(Written.shown(0.1 + 0.2)).isEqualTo(new BigDecimal("0.3"));
      assertThat(Written.shown(100.3 - 100)).isEqualTo(new BigDecimal("0.3"));
      assertThat(Written.shown(0.123456789012345)).isEqualTo(new BigDecimal("0.123456789012345"));
    }
  }

  @Nested
  class TypedNumbers {

    /** Rounded as exact decimals, whatever lies beside them. */
    @ParameterizedTest
    @ValueSource(
        strings = {
          "0.15",
          "0.1500000001",
          "0.1499999999",
          "0.25",
          "0.34999999999",
          "0.35000000001",
          "2.5",
          "149999.999999",
          "1.5e-7"
        })
    void areRoundedExactly(String typed) {
      BigDecimal exact = new BigDecimal(typed);
      BigDecimal found = Decimals.shortest(Double.parseDouble(typed));
      assertThat(new DigitsRule.Fixed(1).round(found))
          .isEqualByComparingTo(exact.round(new MathContext(1, RoundingMode.HALF_UP)));
    }

    @Test
    void ofUpToElevenDigitsAreRoundedExactlyToAnyPlace() {
      Random random = new Random(4);
      for (int i = 0; i < 50_000; i++) {
        BigDecimal typed =
            BigDecimal.valueOf(1 + random.nextLong(99_999_999_999L), random.nextInt(14));
        BigDecimal found = Decimals.shortest(typed.doubleValue());
        int decimals = typed.scale() - 1 - random.nextInt(6);
        assertThat(Written.toDecimals(found, decimals, RoundingMode.HALF_EVEN))
            .isEqualTo(typed.setScale(decimals, RoundingMode.HALF_EVEN));
      }
    }

    /** The metre by the speed of light, as a number whose every digit counts. */
    @Test
    void mayKeepMoreThanTwelveDigits() {
      Rounded rounded =
          Rounded.of(
              Decimals.shortest(299792458.123456),
              Decimals.shortest(0.000002),
              new DigitsRule.Bench());
      assertThat(rounded.value()).isEqualTo(new BigDecimal("299792458.123456"));
    }
  }
}
