package tenthmark.checker.batch;

import java.nio.file.Path;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.UnreadableFileException;

/**
 * One file of a batch.
 *
 * @param file as it was named
 * @param check makes its report
 */
public record Job(Path file, Supplier<FileReport> check) {

  /** The report; whatever goes wrong, the errors of the virtual machine included, becomes one. */
  FileReport run() {
    try {
      return check.get();
    } catch (OutOfMemoryError full) {
      return FileReport.unchecked(file, UnreadableFileException.OUT_OF_MEMORY);
    } catch (Throwable fault) {
      return FileReport.unchecked(file, "the checker failed on this file: " + fault);
    }
  }
}
