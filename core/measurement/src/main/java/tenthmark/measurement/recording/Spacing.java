package tenthmark.measurement.recording;

/** How far apart the marks of a scale are, which decides what part of a division an eye judges. */
public enum Spacing {
  /** Marks so far apart that a tenth of a division can be judged. */
  WIDE,
  /** Marks so close that only a quarter of a division can be judged. */
  FINE
}
