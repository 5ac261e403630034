package tenthmark.measurement.recording;

/**
 * A time measured with a hand-operated stopwatch over one or more cycles.
 *
 * @param cycles number of cycles timed in one go, at least 1
 * @param reactionSeconds human reaction time, greater than zero, in seconds
 */
public record HandTiming(int cycles, double reactionSeconds) {

  /** The timing uncertainty of one cycle, {@code reaction / cycles}. Common practice, no source. */
  public double uncertainty() {
    return reactionSeconds / cycles;
  }
}
