package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class EffortTest {

  private static final long SECOND = 1_000_000_000;

  private long now;
  private final Effort effort = new Effort(() -> now, Duration.ofSeconds(2));

  @Test
  void isBoundedForAllTogether() {
    assertThat(effort.<Integer>spend(Effort.MOST - 10, () -> 7)).isEqualTo(7);
    assertThat(effort.<Integer>spend(10, () -> 8)).isEqualTo(8);
    assertThatThrownBy(() -> effort.spend(1, () -> 9))
        .isInstanceOf(FormulaException.class)
        .hasMessageContaining("3000 million steps together");
  }

  @Test
  void beginsAnewAfterAPause() {
    effort.spend(Effort.MOST, () -> 7);
    now += SECOND;
    assertThatThrownBy(() -> effort.spend(1, () -> 7)).isInstanceOf(FormulaException.class);
    now += 3 * SECOND;
    assertThat(effort.<Integer>spend(Effort.MOST, () -> 8)).isEqualTo(8);
  }

  /** Long calculations themselves are no pause. */
  @Test
  void doesNotBeginAnewWhileOneGoesOn() {
    effort.spend(Effort.MOST, () -> now += 60 * SECOND);
    assertThatThrownBy(() -> effort.spend(1, () -> 7)).isInstanceOf(FormulaException.class);
  }

  @Test
  void ofOneCalculationNeverBeginsAnew() {
    Effort once = Effort.ofOneCalculation();
    once.spend(Effort.MOST, () -> 7);
    assertThatThrownBy(() -> once.spend(1, () -> 7)).isInstanceOf(FormulaException.class);
  }
}
