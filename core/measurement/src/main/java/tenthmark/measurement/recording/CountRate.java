package tenthmark.measurement.recording;

/**
 * How often something happens by chance, as a counter tells it.
 *
 * @param counts number of events counted, zero or greater
 * @param time for which they were counted, greater than zero
 * @param deadTime for which the counter is blind after each event, in the unit of the time; zero or
 *     greater, and shorter than {@code time / counts}
 */
public record CountRate(double counts, double time, double deadTime) {

  /** The part of the time in which the counter sees, greater than zero. */
  private double live() {
    return 1 - counts * deadTime / time;
  }

  /**
   * The true rate, {@code r / (1 - r deadTime)} with {@code r = counts / time}, of a counter whose
   * blind time an event does not lengthen (Knoll, Radiation Detection and Measurement, 4.VII).
   */
  public double rate() {
    return counts / time / live();
  }

  /**
   * The standard uncertainty of the rate: the root of the counts, as they are Poisson distributed,
   * carried through {@link #rate}. Where nothing was counted it is that of one count, as no count
   * is no certainty; common practice, no source.
   */
  public double uncertainty() {
    return Math.sqrt(Math.max(counts, 1)) / time / (live() * live());
  }
}
