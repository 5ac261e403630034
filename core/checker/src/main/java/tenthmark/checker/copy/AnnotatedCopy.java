package tenthmark.checker.copy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.poi.poifs.filesystem.FileMagic;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.report.FileReport;

/**
 * A copy of a student's workbook with a comment on each cell that has findings and a findings sheet
 * in front. Values, formulas and styles of all cells stay as they are; the original is only read.
 */
public final class AnnotatedCopy {

  private AnnotatedCopy() {}

  /**
   * The copy of the workbook that a report is about, in the workbook's own format.
   *
   * @throws UncheckedIOException if there is something in it that cannot be annotated
   */
  public static byte[] of(FileReport report) {
    Annotations annotations = Annotations.of(report);
    Path original = report.file();
    try {
      if (FileMagic.valueOf(original.toFile()) == FileMagic.OLE2) {
        return OfficeCopy.xls(original, annotations);
      }
      return ContentCopy.isPossible(original)
          ? ContentCopy.of(original, content -> new ContentAnnotator(content).annotate(annotations))
          : OfficeCopy.xlsx(original, annotations);
    } catch (IOException | RuntimeException problem) {
      // POI reports what it cannot change by many unchecked exceptions.
      throw new UncheckedIOException(
          new IOException("the workbook cannot be annotated: " + problem, problem));
    }
  }
}
