package tenthmark.measurement.repeats;

/** On which side of the mean a stray may lie. */
public enum Side {
  BOTH,
  LOW,
  HIGH;

  /** Whether a score, positive above the mean, is on it. */
  public boolean holds(double score) {
    return this == BOTH || (this == LOW ? score < 0 : score > 0);
  }

  /** How many sides these are. */
  int count() {
    return this == BOTH ? 2 : 1;
  }
}
