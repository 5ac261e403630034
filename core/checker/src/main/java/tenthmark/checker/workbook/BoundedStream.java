package tenthmark.checker.workbook;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Breaks off with {@link TooLargeException} when more than a number of bytes is read. */
final class BoundedStream extends FilterInputStream {

  private long left;

  BoundedStream(InputStream stream, long most) {
    super(stream);
    this.left = most;
  }

  @Override
  public int read() throws IOException {
    int next = super.read();
    if (next >= 0) {
      count(1);
    }
    return next;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) throws IOException {
    int read = super.read(buffer, offset, length);
    if (read > 0) {
      count(read);
    }
    return read;
  }

  /** How many bytes may still be read. */
  long left() {
    return left;
  }

  void skipToEnd() throws IOException {
    byte[] buffer = new byte[1 << 16];
    while (read(buffer) >= 0) {
      // Only the count matters.
    }
  }

  private void count(int read) throws TooLargeException {
    OutOfTimeException.ifInterrupted();
    left -= read;
    if (left < 0) {
      throw new TooLargeException();
    }
  }
}
