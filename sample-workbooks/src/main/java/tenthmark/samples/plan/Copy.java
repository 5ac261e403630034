package tenthmark.samples.plan;

/** How much of a workbook's contents is written. */
public enum Copy {
  /** Headings, what is given, and formulas: a student types the rest. */
  START,
  /** Everything. */
  COMPLETED
}
