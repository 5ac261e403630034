package tenthmark.measurement.formula;

import tenthmark.measurement.wording.ExplainedException;
import tenthmark.measurement.wording.Message;

/**
 * A formula that cannot be read, followed or computed. The sentence names the cell where one is
 * known.
 */
public final class FormulaException extends ExplainedException {

  private static final long serialVersionUID = 1L;

  private final boolean placed;
  private final boolean ofSlope;

  private FormulaException(Message sentence, boolean placed, boolean ofSlope) {
    super(sentence);
    this.placed = placed;
    this.ofSlope = ofSlope;
  }

  /** Makes the exception from the key of its sentence and what fills the gaps. */
  public static FormulaException of(String key, Object... gaps) {
    return new FormulaException(Message.of(key, gaps), false, false);
  }

  /** A step that has a value but no slope. */
  static FormulaException ofSlope(String key, Object... gaps) {
    return new FormulaException(Message.of(key, gaps), false, true);
  }

  /** Whether only the slope is missing, not the value. */
  boolean isOfSlope() {
    return ofSlope;
  }

  /** The same, said of a cell; the cell nearest to the cause is kept. */
  FormulaException in(String cell) {
    return placed
        ? this
        : new FormulaException(Message.of("formula.in.cell", cell, said()), true, ofSlope);
  }

  /** No stack trace: it is an answer to a user, and a range may hold thousands. */
  @Override
  public synchronized Throwable fillInStackTrace() {
    return this;
  }
}
