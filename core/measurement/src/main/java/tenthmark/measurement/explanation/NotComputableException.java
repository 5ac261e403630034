package tenthmark.measurement.explanation;

/** Something in a formula that only the document's own program can compute. */
final class NotComputableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Names it.
   *
   * @param what a function or a cell
   */
  NotComputableException(String what) {
    super(what);
  }

  /** No stack trace: it is an answer to a user. */
  @Override
  public synchronized Throwable fillInStackTrace() {
    return this;
  }
}
