package tenthmark.samples.corpus;

/** How a workbook adds up the contributions to an uncertainty. */
public enum Combine {
  STRAIGHT,
  QUADRATURE
}
