package tenthmark.measurement.catalogue;

/** What the result of a worksheet function is in a measurement record. */
public enum FunctionRole {
  /** The contribution of reading a scale. */
  READING,
  /** The contribution of the thing that is measured. */
  PHYSICAL,
  /** The contribution of the instrument. */
  INSTRUMENT,
  /** The contribution of a person who times. */
  TIMING,
  /** The contribution of the scatter of repeats. */
  REPEAT,
  /** An uncertainty found in another way than as a contribution of these kinds. */
  STANDARD,
  /** The uncertainty that contributions make together. */
  TOTAL,
  /** A value with its uncertainty as they are reported. */
  RESULT,
  /** A value or an uncertainty rounded for the report. */
  ROUNDED,
  /** The uncertainty of a calculated value. */
  CARRIED,
  /** The same by random numbers. */
  SIMULATED,
  /** A mean of several values. */
  MEAN,
  /** Whether two values agree. */
  COMPARISON,
  /** All numbers of a straight line. */
  LINE,
  /** The slope of a straight line. */
  SLOPE,
  /** Its uncertainty. */
  SLOPE_UNCERTAINTY,
  /** The intercept of a straight line. */
  INTERCEPT,
  /** Its uncertainty. */
  INTERCEPT_UNCERTAINTY,
  /** A point of a straight line. */
  POINT_OF_LINE,
  /** The numbers of another fit. */
  FIT,
  /** A number about scatter or confidence that is no uncertainty itself. */
  STATISTIC,
  /** What another cell shows and why. */
  EXPLANATION,
  /** Something that no record needs to know of. */
  OTHER;

  /** Whether it is a contribution of one kind to the uncertainty of a record. */
  public boolean isContribution() {
    return compareTo(REPEAT) <= 0;
  }
}
