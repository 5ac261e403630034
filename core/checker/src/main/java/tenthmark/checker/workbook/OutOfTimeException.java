package tenthmark.checker.workbook;

/**
 * The time of a file is over. Work on a file looks at {@link #ifInterrupted()} wherever a hostile
 * file could make it long; whoever limits the time interrupts the thread.
 */
public final class OutOfTimeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private OutOfTimeException() {
    super("the time for this file is over");
  }

  /**
   * Stops the work if the thread was interrupted. The thread stays interrupted, so that the work
   * stops at the next call even where a library swallows the exception.
   */
  public static void ifInterrupted() {
    if (Thread.currentThread().isInterrupted()) {
      throw new OutOfTimeException();
    }
  }
}
