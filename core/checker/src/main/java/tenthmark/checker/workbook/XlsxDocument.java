package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An .xlsx or .xlsm file as the whole document that POI builds, of which copies are made. */
public final class XlsxDocument {

  static {
    // POI's own limits would refuse what ours allow: a long table that is well compressed, and a
    // workbook of more than a thousand parts.
    ZipSecureFile.setMinInflateRatio(0);
    ZipSecureFile.setMaxFileCount(Limits.DEFAULT.parts());
    ZipSecureFile.setMaxEntrySize(Limits.DEFAULT.inflatedBytes());
  }

  private XlsxDocument() {}

  /** Builds the document of a file that {@link WorkbookFile} has read within limits. */
  public static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return new XSSFWorkbook(stream);
    }
  }
}
