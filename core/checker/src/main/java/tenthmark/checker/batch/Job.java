package tenthmark.checker.batch;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.UnreadableFileException;

/**
 * One file of a batch. Whatever goes wrong, the errors of the virtual machine included, becomes a
 * line about this file.
 *
 * @param file as it was named
 * @param check makes its report
 * @param write writes what is made of the report, and gives the line that says what could not be
 *     written
 */
public record Job(
    Path file, Supplier<FileReport> check, Function<FileReport, Optional<String>> write) {

  FileReport checked() {
    try {
      return check.get();
    } catch (Throwable fault) {
      return FileReport.unchecked(file, line(fault));
    }
  }

  /** Nothing that goes wrong here takes the report away. */
  Optional<String> written(FileReport report) {
    try {
      return write.apply(report);
    } catch (Throwable fault) {
      return Optional.of(line(fault));
    }
  }

  private static String line(Throwable fault) {
    return fault instanceof OutOfMemoryError
        ? UnreadableFileException.OUT_OF_MEMORY
        : "the checker failed on this file: " + fault;
  }
}
