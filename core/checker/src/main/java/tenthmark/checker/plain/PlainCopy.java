package tenthmark.checker.plain;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipException;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.workbook.Limits;
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

  /**
   * Writes the copy; the source is only read.
   *
   * @throws FileAlreadyExistsException if there is a file at the target
   * @throws UnreadableFileException if the source is no workbook that can be read and copied
   */
  public static PlainCopy write(Path source, Path target)
      throws IOException, UnreadableFileException {
    if (Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    PlainValues values =
        TimeLimit.within(
            Limits.DEFAULT.time(),
            () -> PlainValues.of(WorkbookFile.read(source), Catalogue.load()));
    Path unfinished = target.resolveSibling(target.getFileName() + ".part");
    try {
      copy(source, unfinished, values.changes());
      Files.move(unfinished, target);
    } finally {
      Files.deleteIfExists(unfinished);
    }
    return new PlainCopy(values.replaced(), List.copyOf(values.notes()));
  }

  private static void copy(Path source, Path target, List<CellChange> changes)
      throws IOException, UnreadableFileException {
    try {
      if (isOpenDocument(source)) {
        Files.write(target, PlainOds.of(source, changes));
      } else {
        PlainXlsx.write(source, target, changes);
      }
    } catch (RuntimeException | StackOverflowError problem) {
      // POI reports what it cannot change by many unchecked exceptions.
      throw new UnreadableFileException("the workbook cannot be copied: " + problem, problem);
    }
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
