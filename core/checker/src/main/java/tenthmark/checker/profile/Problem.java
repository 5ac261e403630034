package tenthmark.checker.profile;

/**
 * Something in a profile that cannot be used.
 *
 * @param included the included file that it stands in, as the profile names it; empty for the
 *     profile itself
 * @param line from 1
 * @param column from 1
 * @param message a sentence without its end
 */
public record Problem(String included, int line, int column, String message) {

  /** One in the profile itself. */
  public Problem(int line, int column, String message) {
    this("", line, column, message);
  }

  /**
   * One line, such as {@code course.yaml:12:5: division is -1 but must be greater than 0}.
   *
   * @param file the profile
   */
  public String in(String file) {
    String source = included.isEmpty() ? file : file + " includes " + included;
    return source + ":" + line + ":" + column + ": " + message;
  }
}
