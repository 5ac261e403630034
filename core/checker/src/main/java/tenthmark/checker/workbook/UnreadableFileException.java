package tenthmark.checker.workbook;

/** A file that cannot be read as a workbook. The message is one plain line that says why. */
public final class UnreadableFileException extends Exception {

  /** The line about a file for which the memory does not suffice. */
  public static final String OUT_OF_MEMORY = "it needs more memory than the checker has";

  private static final long serialVersionUID = 1L;

  /** Makes the exception from its line. */
  public UnreadableFileException(String line) {
    super(line);
  }

  /** Makes the exception from its line and what lies behind it. */
  public UnreadableFileException(String line, Throwable cause) {
    super(line, cause);
  }
}
