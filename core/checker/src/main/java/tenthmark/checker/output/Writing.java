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

  /** Writes a report without which the check is incomplete. */
  void text(String what, Path file, Callable<String> report) {
    bytes(what, file, () -> report.call().getBytes(StandardCharsets.UTF_8));
  }

  /** The same for one that is no text. */
  void bytes(String what, Path file, Callable<byte[]> report) {
    try {
      WholeFile.write(file, report.call());
    } catch (Throwable fault) {
      unwritten.add(new Unwritten(what, Reason.of(fault), true));
    }
  }

  /**
   * Writes a copy, without which the check is incomplete only if it was made and has no place. None
   * of an earlier check stays in its place.
   */
  void copy(String what, Path file, Callable<byte[]> copy) {
    try {
      Files.deleteIfExists(file);
      WholeFile.write(file, copy.call());
    } catch (Throwable fault) {
      unwritten.add(new Unwritten(what, Reason.of(fault), fault instanceof IOException));
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
