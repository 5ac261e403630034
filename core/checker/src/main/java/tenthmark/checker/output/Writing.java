package tenthmark.checker.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import tenthmark.checker.report.Unwritten;
import tenthmark.checker.workbook.Reason;

/**
 * Writes several reports of which each is made and written whatever becomes of the others, the
 * errors of the virtual machine included.
 */
final class Writing {

  private final List<Unwritten> unwritten = new ArrayList<>();

  /** Some work on reports that may fail like the writing of one. */
  interface Work {
    void run() throws Exception;
  }

  /** Does what no check is incomplete without. */
  void attempt(String what, Work work) {
    try {
      work.run();
    } catch (Throwable fault) {
      unwritten.add(new Unwritten(what, Reason.of(fault), false));
    }
  }

  /** Writes a report without which the check is incomplete; whether it could be. */
  boolean text(String what, Path file, Callable<String> report) {
    return bytes(what, file, () -> report.call().getBytes(StandardCharsets.UTF_8));
  }

  /** The same for one that is no text. */
  boolean bytes(String what, Path file, Callable<byte[]> report) {
    try {
      WholeFile.write(file, report.call());
      return true;
    } catch (Throwable fault) {
      unwritten.add(new Unwritten(what, Reason.of(fault), true));
      return false;
    }
  }

  /**
   * Writes a copy, without which the check is incomplete only if it was made and has no place. None
   * of an earlier check stays in its place.
   *
   * @return whether it was written
   */
  boolean copy(String what, Path file, Callable<byte[]> copy) {
    try {
      Files.deleteIfExists(file);
      WholeFile.write(file, copy.call());
      return true;
    } catch (Throwable fault) {
      unwritten.add(new Unwritten(what, Reason.of(fault), fault instanceof IOException));
      return false;
    }
  }

  /** Takes away a copy that an earlier check made. */
  void none(String what, Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException fault) {
      unwritten.add(new Unwritten(what, Reason.of(fault), true));
    }
  }

  /** Those that could not be written. */
  List<Unwritten> unwritten() {
    return unwritten;
  }
}
