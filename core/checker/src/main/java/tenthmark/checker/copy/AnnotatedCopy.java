package tenthmark.checker.copy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.poifs.filesystem.FileMagic;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.report.Provenance;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.Reason;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.wording.Sentences;

/**
 * A copy of a student's workbook with a comment on each cell that has findings and a findings sheet
 * in front. Values, formulas and styles of all cells stay as they are; the original is only read.
 */
public final class AnnotatedCopy {

  private AnnotatedCopy() {}

  /** The copy of a workbook that lies where it is called. */
  public static byte[] of(FileReport report, Sentences texts, Limits limits)
      throws UnreadableFileException {
    return of(report, report.file(), Optional.empty(), texts, limits);
  }

  /**
   * The copy of the workbook that a report is about, in the workbook's own format. The file is read
   * within the limits once more before a document is built of all that is in it, for it may be
   * another by now, or its report one of an earlier check.
   *
   * @param original the file that holds the workbook
   * @param provenance by what and when it was checked, if the copy is to say so
   * @param texts what is said of findings, in one language
   * @throws UnreadableFileException if it is no longer within the limits, or there is something in
   *     it that cannot be annotated
   */
  public static byte[] of(
      FileReport report,
      Path original,
      Optional<Provenance> provenance,
      Sentences texts,
      Limits limits)
      throws UnreadableFileException {
    WorkbookFile.read(original, limits);
    Annotations annotations = Annotations.of(report, provenance, texts);
    try {
      if (isCompound(original)) {
        return OfficeCopy.xls(original, annotations);
      }
      return ContentCopy.isPossible(original)
          ? ContentCopy.of(original, content -> new ContentAnnotator(content).annotate(annotations))
          : OfficeCopy.xlsx(original, annotations);
    } catch (StackOverflowError deep) {
      throw failure("its parts are nested too deeply", deep);
    } catch (IOException | RuntimeException problem) {
      // POI reports what it cannot change by many unchecked exceptions.
      throw failure(Reason.ofCopy(problem), problem);
    }
  }

  private static boolean isCompound(Path original) throws IOException {
    try (InputStream content = FileMagic.prepareToCheckMagic(Files.newInputStream(original))) {
      return FileMagic.valueOf(content) == FileMagic.OLE2;
    }
  }

  private static UnreadableFileException failure(String reason, Throwable cause) {
    return new UnreadableFileException("the workbook cannot be annotated: " + reason, cause);
  }
}
