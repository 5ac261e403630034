package tenthmark.measurement.catalogue;

/** What a worksheet function gives back. */
public enum ResultKind {
  /** One number; a bad argument gives a cell error. */
  NUMBER,
  /** One text; a bad argument gives the sentence that explains it. */
  TEXT,
  /** A number or a text, as the arguments ask; a bad argument gives a cell error. */
  EITHER,
  /** Several rows and columns; a bad argument gives the sentence in the first cell. */
  TABLE
}
