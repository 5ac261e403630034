package tenthmark.samples.corpus;

/** What a number is that is no part of a record. */
public enum Role {
  /** A trial's or a row's number. */
  INDEX,
  /** A reading without an uncertainty of its own, which feeds a mean or a line. */
  RAW,
  /** A step on the way to a result. */
  CALCULATED,
  /** A given constant: g, a conversion factor. */
  CONSTANT,
  /** How many: swings, turns, repeats. */
  COUNT,
  /** A reference value. */
  ACCEPTED,
  /** A difference, a percent error, a number of sigmas. */
  COMPARISON,
  /** A standard deviation, a residual, a correlation. */
  STATISTIC,
  DATE,
  /** A number that only names something. */
  LABEL
}
