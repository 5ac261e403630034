package tenthmark.checker.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.poifs.filesystem.FileMagic;

/** Reads a workbook from a file by what the file holds; its name does not matter. */
public final class WorkbookFile {

  private WorkbookFile() {}

  /** Reads a file and never writes to it. */
  public static Workbook read(Path file) throws UnreadableFileException {
    return read(file, Limits.DEFAULT);
  }

  /** Reads a file within limits and never writes to it. */
  public static Workbook read(Path file, Limits limits) throws UnreadableFileException {
    try {
      requireContent(file);
      Workbook workbook =
          switch (FileMagic.valueOf(file.toFile())) {
            case OOXML -> readArchive(file, limits);
            case OLE2 -> XlsReader.read(file, limits);
            default ->
                throw new UnreadableFileException(
                    "not a workbook: its content is neither .xlsx, .xlsm, .xls nor .ods");
          };
      if (workbook.sheets().isEmpty()) {
        throw new UnreadableFileException("the workbook holds no sheet");
      }
      return workbook;
    } catch (IOException problem) {
      throw new UnreadableFileException("cannot be opened: " + reason(problem), problem);
    }
  }

  private static void requireContent(Path file) throws IOException, UnreadableFileException {
    if (!Files.exists(file)) {
      throw new UnreadableFileException("no such file or folder");
    }
    if (!Files.isRegularFile(file)) {
      throw new UnreadableFileException("not a file");
    }
    if (Files.size(file) == 0) {
      throw new UnreadableFileException("the file is empty (0 bytes)");
    }
  }

  private static Workbook readArchive(Path file, Limits limits)
      throws IOException, UnreadableFileException {
    try (Archive archive = Archive.open(file, limits)) {
      return switch (archive.kind()) {
        case OPEN_DOCUMENT_SPREADSHEET ->
            XmlPart.read(archive, "content.xml", limits, xml -> new OdsContent(xml, limits).read());
        case OFFICE_OPEN_XML_SPREADSHEET -> new XlsxReader(archive, limits).read();
      };
    }
  }

  private static String reason(IOException problem) {
    return problem.getMessage() == null ? problem.getClass().getSimpleName() : problem.getMessage();
  }
}
