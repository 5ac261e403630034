package tenthmark.checker.plain;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipException;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.TimeLimit;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;

/**
 * A copy of a workbook for people without the extension: every formula that calls a LAB function is
 * replaced by its recalculated value, and formulas that depend on such cells store a value that
 * fits.
 *
 * @param replaced how many formulas became values
 * @param notes what a reader must know, one line each; empty if every value is recalculated
 */
public record PlainCopy(long replaced, List<String> notes) {

  private record Made(PlainValues values, byte[] copy) {}

  /** Writes the copy within the usual limits. */
  public static PlainCopy write(Path source, Path target)
      throws IOException, UnreadableFileException {
    return write(source, target, Limits.DEFAULT);
  }

  /**
   * Writes the copy; the source is only read.
   *
   * @param limits what reading, recalculating and copying it together may take
   * @throws FileAlreadyExistsException if there is a file at the target
   * @throws UnreadableFileException if the source is no workbook that can be read and copied
   */
  public static PlainCopy write(Path source, Path target, Limits limits)
      throws IOException, UnreadableFileException {
    if (Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Made made = TimeLimit.within(limits.time(), () -> made(source, limits));
    Path unfinished = target.resolveSibling(".part-" + UUID.randomUUID());
    try {
      Files.write(unfinished, made.copy());
      Files.move(unfinished, target);
    } finally {
      Files.deleteIfExists(unfinished);
    }
    return new PlainCopy(made.values().replaced(), List.copyOf(made.values().notes()));
  }

  /**
   * The same workbook with the values that its formulas have now, its LAB functions among them.
   *
   * @throws UnreadableFileException if it is no workbook that can be read
   */
  public static byte[] refreshed(Path source, Limits limits)
      throws IOException, UnreadableFileException {
    List<CellChange> changes =
        PlainValues.refreshed(WorkbookFile.read(source, limits), Catalogue.load());
    return isOpenDocument(source) ? PlainOds.of(source, changes) : PlainXlsx.of(source, changes);
  }

  private static Made made(Path source, Limits limits) throws UnreadableFileException {
    PlainValues values = PlainValues.of(WorkbookFile.read(source, limits), Catalogue.load());
    try {
      return new Made(
          values,
          isOpenDocument(source)
              ? PlainOds.of(source, values.changes())
              : PlainXlsx.of(source, values.changes()));
    } catch (StackOverflowError deep) {
      throw failure("its parts are nested too deeply", deep);
    } catch (IOException | RuntimeException problem) {
      // POI reports what it cannot change by many unchecked exceptions.
      throw failure(Reason.ofCopy(problem), problem);
    }
  }

  private static UnreadableFileException failure(String reason, Throwable cause) {
    return new UnreadableFileException("the workbook cannot be copied: " + reason, cause);
  }

  private static boolean isOpenDocument(Path source) throws IOException, UnreadableFileException {
    try {
      return ContentCopy.isPossible(source);
    } catch (ZipException old) {
      throw new UnreadableFileException(
          "an .xls workbook cannot be copied; save it as .xlsx or .ods first", old);
    }
  }
}
