package tenthmark.checker.handout;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipException;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.plain.PlainCopy;
import tenthmark.checker.reading.InsideProfile;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.WorkbookConvention;

/**
 * What students get: a prepared workbook with the course's convention and profile inside. Cells
 * that hold nothing can be filled in, all others are protected (without a password: to keep
 * formulas from being typed over, not to keep secrets). The prepared workbook is only read.
 */
public final class HandOut {

  private HandOut() {}

  /**
   * The bytes of the copy, in the format of the prepared workbook.
   *
   * @throws UnreadableFileException if the workbook cannot be read, holds a course already, or
   *     cannot be copied
   */
  public static byte[] of(Path prepared, CourseSheet course) throws UnreadableFileException {
    Limits limits = Limits.DEFAULT;
    return TimeLimit.within(limits.time(), () -> made(prepared, course, limits));
  }

  private static byte[] made(Path prepared, CourseSheet course, Limits limits)
      throws UnreadableFileException {
    requireNone(WorkbookFile.read(prepared, limits));
    Path folder = null;
    try {
      boolean openDocument = isOpenDocument(prepared);
      folder = Files.createTempDirectory("tenthmark");
      Path copy = folder.resolve(openDocument ? "copy.ods" : "copy.xlsx");
      Files.write(
          copy, openDocument ? HandOutOds.of(prepared, course) : HandOutXlsx.of(prepared, course));
      return PlainCopy.refreshed(copy, limits);
    } catch (StackOverflowError deep) {
      throw failure("its parts are nested too deeply", deep);
    } catch (IOException | RuntimeException problem) {
      // POI reports what it cannot change by many unchecked exceptions.
      throw failure(Reason.ofCopy(problem), problem);
    } finally {
      remove(folder);
    }
  }

  private static void requireNone(Workbook workbook) throws UnreadableFileException {
    Optional<String> taken =
        workbook.names().stream()
            .map(name -> name.name())
            .filter(
                name ->
                    name.equalsIgnoreCase(WorkbookConvention.NAME)
                        || name.equalsIgnoreCase(InsideProfile.NAME))
            .findFirst();
    if (taken.isPresent()) {
      throw new UnreadableFileException("it holds " + taken.get() + " already");
    }
  }

  private static boolean isOpenDocument(Path file) throws IOException, UnreadableFileException {
    try {
      return ContentCopy.isPossible(file);
    } catch (ZipException old) {
      throw new UnreadableFileException(
          "an .xls workbook cannot be handed out; save it as .xlsx or .ods first", old);
    }
  }

  private static UnreadableFileException failure(String reason, Throwable cause) {
    return new UnreadableFileException("the workbook cannot be copied: " + reason, cause);
  }

  private static void remove(Path folder) throws UnreadableFileException {
    if (folder == null) {
      return;
    }
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
      Files.delete(folder);
    } catch (IOException problem) {
      throw new UnreadableFileException(folder + " cannot be removed", problem);
    }
  }
}
