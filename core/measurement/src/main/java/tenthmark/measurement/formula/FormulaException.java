package tenthmark.measurement.formula;

/**
 * A formula that cannot be read, followed or computed. The message is a plain sentence for the
 * student that names the cell where one is known.
 */
public final class FormulaException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final boolean placed;
  private final boolean ofSlope;

  /** Makes the exception from its whole sentence. */
  public FormulaException(String sentence) {
    this(sentence, false, false);
  }

  private FormulaException(String sentence, boolean placed, boolean ofSlope) {
    super(sentence);
    this.placed = placed;
    this.ofSlope = ofSlope;
  }

  /** A step that has a value but no slope. */
  static FormulaException ofSlope(String sentence) {
    return new FormulaException(sentence, false, true);
  }

  /** Whether only the slope is missing, not the value. */
  boolean isOfSlope() {
    return ofSlope;
  }

  /** The same, said of a cell; the cell nearest to the cause is kept. */
  FormulaException in(String cell) {
    return placed
        ? this
        : new FormulaException("cell " + cell + ": " + getMessage(), true, ofSlope);
  }

  /** No stack trace: it is an answer to a user, and a range may hold thousands. */
  @Override
  public synchronized Throwable fillInStackTrace() {
    return this;
  }
}
