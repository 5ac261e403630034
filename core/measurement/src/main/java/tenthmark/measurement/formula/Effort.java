package tenthmark.measurement.formula;

import java.time.Duration;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * What the long calculations of one recalculation of a document cost together, so that many that
 * are each within their bounds do not stop the office. An office does not say when a recalculation
 * begins: a pause since the last long calculation is taken for it.
 */
public final class Effort {

  /** Steps that all may take together: about ten seconds on two processors. */
  public static final long MOST = 3_000_000_000L;

  private static final long MILLION = 1_000_000;

  private final LongSupplier clock;
  private final long pause;
  private long spent;
  private long last;

  /**
   * Nothing has been spent.
   *
   * @param clock in nanoseconds
   * @param pause after which another recalculation begins
   */
  public Effort(LongSupplier clock, Duration pause) {
    this.clock = clock;
    this.pause = pause.toNanos();
    this.last = clock.getAsLong();
  }

  /** The effort of a document that is calculated once. */
  public static Effort ofOneCalculation() {
    return new Effort(() -> 0, Duration.ZERO);
  }

  /**
   * Does work that takes so many steps.
   *
   * @throws FormulaException if they are more than are left
   */
  public <T> T spend(long steps, Supplier<T> work) {
    begin(steps);
    try {
      return work.get();
    } finally {
      end();
    }
  }

  private synchronized void begin(long steps) {
    if (clock.getAsLong() - last > pause) {
      spent = 0;
    }
    last = clock.getAsLong();
    if (steps > MOST - spent) {
      throw FormulaException.of("formula.effort", MOST / MILLION, Math.max(1, steps / MILLION));
    }
    spent += steps;
  }

  private synchronized void end() {
    last = clock.getAsLong();
  }
}
