package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** The zip archive that an .xlsx, .xlsm or .ods file is, read within limits. */
final class Archive implements AutoCloseable {

  /** What the archive holds. */
  enum Kind {
    OPEN_DOCUMENT_SPREADSHEET,
    OFFICE_OPEN_XML_SPREADSHEET
  }

  private static final String ODF_SPREADSHEET = "application/vnd.oasis.opendocument.spreadsheet";
  private static final String PROTECTED =
      "the workbook is protected by a password and cannot be read";
  private static final int SHORT_PART = 1 << 20;

  private final ZipFile zip;
  private final Limits limits;

  private Archive(ZipFile zip, Limits limits) {
    this.zip = zip;
    this.limits = limits;
  }

  static Archive open(Path file, Limits limits) throws IOException, UnreadableFileException {
    try {
      return new Archive(new ZipFile(file.toFile()), limits);
    } catch (ZipException damage) {
      throw damaged(damage);
    }
  }

  static UnreadableFileException damaged(Exception cause) {
    return new UnreadableFileException("the file is damaged or cut short", cause);
  }

  static UnreadableFileException isProtected() {
    return new UnreadableFileException(PROTECTED);
  }

  Kind kind() throws IOException, UnreadableFileException {
    if (zip.getEntry("mimetype") != null) {
      requireOpenSpreadsheet();
      return Kind.OPEN_DOCUMENT_SPREADSHEET;
    }
    if (zip.getEntry("[Content_Types].xml") != null) {
      requireOfficeSpreadsheet();
      return Kind.OFFICE_OPEN_XML_SPREADSHEET;
    }
    throw new UnreadableFileException("not a workbook: a zip archive with other content");
  }

  private void requireOpenSpreadsheet() throws IOException, UnreadableFileException {
    if (!text("mimetype").strip().startsWith(ODF_SPREADSHEET)) {
      throw new UnreadableFileException("not a workbook: an OpenDocument file of another kind");
    }
    boolean encrypted =
        zip.getEntry("encrypted-package") != null
            || zip.getEntry("META-INF/manifest.xml") != null
                && text("META-INF/manifest.xml").contains("encryption-data");
    if (encrypted) {
      throw isProtected();
    }
  }

  private void requireOfficeSpreadsheet() throws IOException, UnreadableFileException {
    String types = text("[Content_Types].xml").toLowerCase(Locale.ROOT);
    if (types.contains("ms-excel.sheet.binary")) {
      throw new UnreadableFileException("an .xlsb workbook; save it as .xlsx or .ods first");
    }
    if (!types.contains("sheet.main+xml") && !types.contains("template.main+xml")) {
      throw new UnreadableFileException("not a workbook: an Office file of another kind");
    }
  }

  private String text(String part) throws IOException, UnreadableFileException {
    try (InputStream stream = zip.getInputStream(zip.getEntry(part))) {
      return new String(stream.readNBytes(SHORT_PART), StandardCharsets.UTF_8);
    } catch (ZipException damage) {
      throw damaged(damage);
    }
  }

  /** A part of the archive that breaks off with {@link TooLargeException} at the limit. */
  InputStream part(String name) throws IOException, UnreadableFileException {
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      throw new UnreadableFileException("the file is damaged: it has no " + name);
    }
    return new BoundedStream(zip.getInputStream(entry), limits.streamedBytes());
  }

  /** Unpacks all parts once, because POI holds them in memory whole and trusts their XML. */
  void requireBoundedParts() throws IOException, UnreadableFileException {
    long left = limits.heldBytes();
    for (ZipEntry entry : Collections.list(zip.entries())) {
      BoundedStream stream = new BoundedStream(zip.getInputStream(entry), left);
      try (stream) {
        if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
          Xml.requireWellFormed(stream);
        } else {
          stream.skipToEnd();
        }
      } catch (ZipException damage) {
        throw damaged(damage);
      } catch (TooLargeException tooLarge) {
        throw tooLarge.unreadable();
      }
      left = stream.left();
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
