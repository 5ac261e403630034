package tenthmark.measurement.formula;

import tenthmark.measurement.wording.ExplainedException;
import tenthmark.measurement.wording.Message;

/**
 * A formula that cannot be read, followed or computed. The sentence names the cell where one is
 * known.
 */
public final class FormulaException extends ExplainedException {

  private static final long serialVersionUID = 1L;

  private final Kind kind;
  private final boolean placed;

  /** What the document itself shows there. */
  private enum Kind {
    /** It may well show a value: the engine cannot follow. */
    LIMIT,
    /** It shows a value too, but no slope can be had. */
    SLOPE,
    /** It shows an error too. */
    ERROR,
    /** It shows that something is not available, as a search that finds nothing does. */
    NOT_AVAILABLE
  }

  private FormulaException(Kind kind, Message sentence, boolean placed) {
    super(sentence);
    this.kind = kind;
    this.placed = placed;
  }

  /** Makes the exception from the key of its sentence and what fills the gaps. */
  public static FormulaException of(String key, Object... gaps) {
    return new FormulaException(Kind.LIMIT, Message.of(key, gaps), false);
  }

  /** A step that has a value but no slope. */
  static FormulaException ofSlope(String key, Object... gaps) {
    return new FormulaException(Kind.SLOPE, Message.of(key, gaps), false);
  }

  /** A step that has no value in any program: an error that a formula may deal with. */
  static FormulaException ofError(String key, Object... gaps) {
    return new FormulaException(Kind.ERROR, Message.of(key, gaps), false);
  }

  /** A search that finds nothing. */
  static FormulaException notAvailable(String key, Object... gaps) {
    return new FormulaException(Kind.NOT_AVAILABLE, Message.of(key, gaps), false);
  }

  /** Whether only the slope is missing, not the value. */
  boolean isOfSlope() {
    return kind == Kind.SLOPE;
  }

  /** Whether the document shows an error as well. */
  public boolean isError() {
    return kind == Kind.ERROR || isNotAvailable();
  }

  /** Whether that error says that something is not available. */
  boolean isNotAvailable() {
    return kind == Kind.NOT_AVAILABLE;
  }

  /** The same, said of a cell; the cell nearest to the cause is kept. */
  FormulaException in(String cell) {
    return placed
        ? this
        : new FormulaException(kind, Message.of("formula.in.cell", cell, said()), true);
  }

  /** No stack trace: it is an answer to a user, and a range may hold thousands. */
  @Override
  public synchronized Throwable fillInStackTrace() {
    return this;
  }
}
