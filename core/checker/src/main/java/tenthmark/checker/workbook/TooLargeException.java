package tenthmark.checker.workbook;

import java.io.IOException;

/** A part of a file that unpacks to more than the limit. */
final class TooLargeException extends IOException {

  private static final long serialVersionUID = 1L;

  TooLargeException() {
    super("too large");
  }

  UnreadableFileException unreadable() {
    return new UnreadableFileException("the workbook unpacks to more data than is allowed", this);
  }
}
