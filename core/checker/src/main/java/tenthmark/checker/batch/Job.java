package tenthmark.checker.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Unwritten;
import tenthmark.checker.workbook.Reason;

/**
 * One file of a batch. Whatever goes wrong, the errors of the virtual machine included, becomes a
 * line about this file.
 *
 * @param file as it was named
 * @param check makes its report
 * @param write writes what is made of the report, and gives what could not be written
 */
public record Job(
    Path file, Supplier<FileReport> check, Function<FileReport, List<Unwritten>> write) {

  FileReport checked() {
    try {
      return check.get();
    } catch (Throwable fault) {
      return FileReport.unchecked(file, Reason.of(fault));
    }
  }

  /** Nothing that goes wrong here takes the report away. */
  List<Unwritten> written(FileReport report) {
    try {
      return write.apply(report);
    } catch (Throwable fault) {
      return List.of(new Unwritten("its report", Reason.of(fault), true));
    }
  }
}
