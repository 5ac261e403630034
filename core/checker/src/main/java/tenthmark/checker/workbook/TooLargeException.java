package tenthmark.checker.workbook;

import java.io.IOException;

/** A part of a file that unpacks to more than the limit. */
final class TooLargeException extends IOException {

  private static final long serialVersionUID = 1L;

  TooLargeException() {
    super("too large");
  }
}
