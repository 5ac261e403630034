package tenthmark.checker.evaluation;

/** What a formula is, and with it every formula that depends on it. */
enum Trait {
  /** Its precedents are still being followed; this one is not handed on. */
  OPEN,
  /** Another value at each recalculation. */
  CHANGING,
  /** Computed by a LAB function. */
  THROUGH_LAB,
  /** In a circle too long to be calculated, or behind one. */
  CIRCLING
}
