package tenthmark.checker.course;

/** Where a value has to come from. */
public enum Origin {
  /** Read off an instrument. */
  MEASURED,
  /** From recorded values, by a formula. */
  CALCULATED,
  /** Either. */
  ANY
}
