package tenthmark.checker.rules;

/** How grave a finding is. */
public enum Severity {
  /** Wrong or missing. */
  ERROR,
  /** Probably wrong. */
  WARNING,
  /** Worth knowing; no fault. */
  NOTE
}
