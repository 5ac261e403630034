package tenthmark.checker.report;

/**
 * A report that could not be written.
 *
 * @param what such as {@code its page}, or the file that it should have been
 * @param reason why, in one line
 * @param incomplete whether the check is incomplete without it
 */
public record Unwritten(String what, String reason, boolean incomplete) {

  /** The line about it. */
  public String line() {
    return what + " cannot be written: " + reason;
  }
}
