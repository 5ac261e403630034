package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Writes small .ods files by hand, so that tests can put anything into them. */
final class OdsFile {

  static final String MIME_TYPE = "application/vnd.oasis.opendocument.spreadsheet";

  private OdsFile() {}

  static Path write(Path file, String tables) throws IOException {
    return write(file, "", tables);
  }

  static Path write(Path file, String prologue, String tables) throws IOException {
    String content =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>"
            + prologue
            + "<office:document-content"
            + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
            + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
            + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
            + " xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\""
            + " xmlns:svg=\"urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0\""
            + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
            + " xmlns:meta=\"urn:oasis:names:tc:opendocument:xmlns:meta:1.0\""
            + " xmlns:draw=\"urn:oasis:names:tc:opendocument:xmlns:drawing:1.0\""
            + " xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0\""
            + "><office:body><office:spreadsheet>"
            + tables
            + "</office:spreadsheet></office:body></office:document-content>";
    return zip(file, "mimetype", MIME_TYPE, "content.xml", content);
  }

  /** The same file with its content in another charset, behind a byte order mark. */
  static Path encoded(Path source, Path target, Charset charset) throws IOException {
    try (ZipFile plain = new ZipFile(source.toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
      zip.putNextEntry(new ZipEntry("mimetype"));
      zip.write(MIME_TYPE.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
      byte[] content = plain.getInputStream(plain.getEntry("content.xml")).readAllBytes();
      String text = new String(content, StandardCharsets.UTF_8);
      String declared = "\uFEFF" + text.replace(" encoding=\"UTF-8\"", "");
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(declared.getBytes(charset));
      zip.closeEntry();
    }
    return target;
  }

  /** A zip file of names and texts in turn. */
  static Path zip(Path file, String... namesAndTexts) throws IOException {
    try (OutputStream target = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(target)) {
      for (int i = 0; i < namesAndTexts.length; i += 2) {
        zip.putNextEntry(new ZipEntry(namesAndTexts[i]));
        zip.write(namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }

  static String table(String rows) {
    return "<table:table table:name=\"Sheet1\">" + rows + "</table:table>";
  }

  static String row(String cells) {
    return "<table:table-row>" + cells + "</table:table-row>";
  }

  static String number(double value) {
    return "<table:table-cell office:value-type=\"float\" office:value=\"" + value + "\"/>";
  }
}
