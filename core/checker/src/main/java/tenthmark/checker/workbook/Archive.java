package tenthmark.checker.workbook;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
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

  /** Types of the main part of a workbook or template, with macros or without. */
  private static final Pattern SPREADSHEET_TYPE =
      Pattern.compile(
          "(spreadsheetml|ms-excel)\\.(sheet|template|addin)(\\.macroenabled)?\\.main\\+xml");

  private static final int SHORT_PART = 1 << 20;

  private final ZipFile zip;
  private final Limits limits;
  private final Map<String, ZipEntry> entries = new HashMap<>();

  private Archive(ZipFile zip, Limits limits) {
    this.zip = zip;
    this.limits = limits;
  }

  /** Opens an archive and unpacks it once, so that whoever reads it later meets no surprise. */
  static Archive open(Path file, Limits limits) throws IOException, UnreadableFileException {
    ZipFile zip = null;
    try {
      zip = zip(file);
      Archive archive = new Archive(zip, limits);
      archive.index();
      archive.verify(Files.size(file));
      Archive opened = archive;
      zip = null;
      return opened;
    } catch (ZipException | EOFException | IllegalArgumentException damage) {
      // IllegalArgumentException: a name of a part that is not in the encoding it claims
      throw damaged(damage);
    } catch (TooLargeException tooLarge) {
      throw limits.tooLarge();
    } finally {
      if (zip != null) {
        zip.close();
      }
    }
  }

  /**
   * Java opens archives by the text of their names. One whose name is no text in the encoding of
   * the system is opened by a link to it.
   */
  private static ZipFile zip(Path file) throws IOException {
    if (isText(file)) {
      return new ZipFile(file.toString());
    }
    Path folder = Files.createTempDirectory("tenthmark");
    Path link = folder.resolve("link");
    try {
      Files.createSymbolicLink(link, file.toAbsolutePath());
      return new ZipFile(link.toString());
    } finally {
      Files.deleteIfExists(link);
      Files.delete(folder);
    }
  }

  private static boolean isText(Path file) {
    try {
      return file.equals(Path.of(file.toString()));
    } catch (InvalidPathException unreadable) {
      return false;
    }
  }

  static UnreadableFileException damaged(Exception cause) {
    return new UnreadableFileException("the file is damaged or cut short", cause);
  }

  static UnreadableFileException isProtected() {
    return new UnreadableFileException(PROTECTED);
  }

  private void index() throws UnreadableFileException {
    if (zip.size() > limits.parts()) {
      throw new UnreadableFileException("the file holds more than " + limits.parts() + " parts");
    }
    for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
      ZipEntry entry = all.nextElement();
      if (entries.put(key(entry.getName()), entry) != null) {
        // Two programs may each read another one of them.
        throw new UnreadableFileException("the file is damaged: it holds a part twice");
      }
    }
  }

  /** Names of parts are the same in any letter case (ECMA-376 part 2, 6.2.2.3). */
  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** Checks that each part is whole, and that all together are not too much. */
  private void verify(long fileSize) throws IOException, UnreadableFileException {
    long left = limits.inflatedBytes();
    long stored = fileSize;
    byte[] buffer = new byte[1 << 16];
    for (ZipEntry entry : entries.values()) {
      long allowance = Math.min(stored, allowance(entry));
      stored -= allowance;
      CRC32 sum = new CRC32();
      long size = 0;
      try (InputStream stream = new BoundedStream(zip.getInputStream(entry), left + allowance)) {
        for (int count = stream.read(buffer); count >= 0; count = stream.read(buffer)) {
          sum.update(buffer, 0, count);
          size += count;
        }
      }
      if (size != entry.getSize() || sum.getValue() != entry.getCrc()) {
        throw new ZipException("size or check sum of a part is wrong");
      }
      left -= Math.max(0, size - allowance);
    }
  }

  /** A photograph in a workbook may be as large as it is in the file. */
  private static long allowance(ZipEntry entry) {
    return isXml(entry.getName()) ? 0 : entry.getCompressedSize();
  }

  private static boolean isXml(String name) {
    return key(name).matches(".*\\.(xml|rels|vml|rdf)");
  }

  Kind kind() throws IOException, UnreadableFileException {
    if (has("mimetype")) {
      requireOpenSpreadsheet();
      return Kind.OPEN_DOCUMENT_SPREADSHEET;
    }
    if (has("[Content_Types].xml")) {
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
        has("encrypted-package")
            || (has("META-INF/manifest.xml")
                && text("META-INF/manifest.xml").contains("encryption-data"));
    if (encrypted) {
      throw isProtected();
    }
  }

  private void requireOfficeSpreadsheet() throws IOException, UnreadableFileException {
    String types = text("[Content_Types].xml").toLowerCase(Locale.ROOT);
    if (types.contains("ms-excel.sheet.binary")) {
      throw new UnreadableFileException("an .xlsb workbook; save it as .xlsx or .ods first");
    }
    if (!SPREADSHEET_TYPE.matcher(types).find()) {
      throw new UnreadableFileException("not a workbook: an Office file of another kind");
    }
  }

  private String text(String part) throws IOException, UnreadableFileException {
    try (InputStream stream = part(part)) {
      return new String(stream.readNBytes(SHORT_PART), StandardCharsets.UTF_8);
    }
  }

  /** Whether the archive holds a part. */
  boolean has(String part) {
    return entries.containsKey(key(part));
  }

  /** A part of the archive that breaks off with {@link TooLargeException} at the limit. */
  InputStream part(String name) throws IOException, UnreadableFileException {
    ZipEntry entry = entries.get(key(name));
    if (entry == null) {
      throw new UnreadableFileException("the file is damaged: it has no " + name);
    }
    return new BoundedStream(zip.getInputStream(entry), limits.inflatedBytes());
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
