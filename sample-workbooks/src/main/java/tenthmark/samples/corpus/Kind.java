package tenthmark.samples.corpus;

/** How the value of a record came about. */
public enum Kind {
  MEASURED,
  CALCULATED,
  MEAN,
  SLOPE,
  INTERCEPT
}
