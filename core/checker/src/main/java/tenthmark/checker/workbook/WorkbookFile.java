package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;

/** Reads a workbook from a file by what the file holds; its name does not matter. */
public final class WorkbookFile {

  /** How a zip archive begins. */
  private static final String ZIP = "504b0304";

  /** How a compound file begins, such as an .xls file. */
  private static final String COMPOUND = "d0cf11e0";

  /** How .xls files began that were no compound files yet. */
  private static final String BIFF2 = "09000400";

  private static final String BIFF3 = "09020600";

  private static final String BIFF4 = "09040600";

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
          switch (firstBytes(file)) {
            case ZIP -> readArchive(file, limits);
            case COMPOUND -> XlsReader.read(file, limits);
            case BIFF2, BIFF3, BIFF4 -> throw XlsReader.tooOld();
            default ->
                throw new UnreadableFileException(
                    "not a workbook: its content is neither .xlsx, .xlsm, .xls nor .ods");
          };
      if (workbook.sheets().isEmpty()) {
        throw new UnreadableFileException("the workbook holds no sheet");
      }
      return workbook;
    } catch (IOException problem) {
      throw new UnreadableFileException("cannot be opened: " + Reason.of(problem), problem);
    }
  }

  private static String firstBytes(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return HexFormat.of().formatHex(stream.readNBytes(4));
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
}
