package tenthmark.measurement.rounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {

  // 8.41E21 and 2.0E-322 come out longer from Double.toString before Java 19 (JDK-4511638)
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "0.15",
        "-0.1",
        "1200",
        "1E+23",
        "8.41E+21",
        "5E-324",
        "1.7976931348623157E+308"
      })
  void giveBackTheNumberThatWasTyped(String typed) {
    assertThat(Decimals.shortest(Double.parseDouble(typed)))
        .isEqualByComparingTo(new BigDecimal(typed));
  }

  @Test
  void findShortNumbersAnywhereInTheRange() {
    Random random = new Random(1);
    for (int i = 0; i < 20_000; i++) {
      BigDecimal typed =
          BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(560) - 280)
              .stripTrailingZeros();
      assertThat(Decimals.shortest(typed.doubleValue())).isEqualTo(typed);
    }
  }

  @Test
  void areTheSameDouble() {
    Random random = new Random(2);
    for (int i = 0; i < 20_000; i++) {
      double number = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(number)) {
        assertThat(Decimals.shortest(number).doubleValue()).isEqualTo(number + 0.0);
      }
    }
  }
}
