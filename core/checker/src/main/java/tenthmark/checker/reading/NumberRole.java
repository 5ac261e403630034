package tenthmark.checker.reading;

/** What a number stands for that is no part of a measurement record. */
public enum NumberRole {
  /** A reading that a mean or a line is computed from, without an uncertainty of its own. */
  RAW,
  /** A step between records and results, by a formula. */
  CALCULATED,
  /** A given number, such as a conversion factor. */
  CONSTANT,
  /** How often something was done or turned. */
  COUNT,
  /** A value that the course or a handbook accepts. */
  ACCEPTED,
  /** A difference or ratio of results. */
  COMPARISON,
  /** A standard deviation, a residual, a correlation. */
  STATISTIC,
  /** The number of a row or a trial. */
  INDEX,
  /** A day or a time of day. */
  DATE,
  /** A number that only names something. */
  LABEL
}
