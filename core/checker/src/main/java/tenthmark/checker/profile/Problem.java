package tenthmark.checker.profile;

/**
 * Something in a profile that cannot be used.
 *
 * @param line from 1
 * @param column from 1
 * @param message a sentence without its end
 */
public record Problem(int line, int column, String message) {

  /** One line, such as {@code course.yaml:12:5: division is -1 but must be greater than 0}. */
  public String in(String file) {
    return file + ":" + line + ":" + column + ": " + message;
  }
}
