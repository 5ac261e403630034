package tenthmark.checker.course;

/** How an instrument shows its value. */
public enum ApparatusKind {
  /** Marks, read by eye. */
  SCALE,
  /** Digits. */
  DISPLAY,
  /** Digits, started and stopped by hand. */
  STOPWATCH
}
