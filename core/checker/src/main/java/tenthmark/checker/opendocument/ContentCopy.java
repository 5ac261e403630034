package tenthmark.checker.opendocument;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A copy of an .ods file with another content: every other part is copied as it is, in the same
 * order, the mimetype first and not compressed (OpenDocument 1.3, part 2).
 */
public final class ContentCopy {

  private static final String CONTENT = "content.xml";

  private ContentCopy() {}

  /** Whether a packed file is an OpenDocument file, by its mimetype. */
  public static boolean isPossible(Path original) throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(original).get()) {
      return zip.getEntry("mimetype") != null;
    }
  }

  /** The bytes of the copy, in which the change was made to content.xml. */
  public static byte[] of(Path original, Consumer<Document> change) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    try (ZipFile source = ZipFile.builder().setPath(original).get();
        ZipArchiveOutputStream target = new ZipArchiveOutputStream(copy)) {
      for (ZipArchiveEntry entry : Collections.list(source.getEntriesInPhysicalOrder())) {
        if (entry.getName().equals(CONTENT)) {
          ZipArchiveEntry content = new ZipArchiveEntry(CONTENT);
          content.setTime(entry.getTime());
          target.putArchiveEntry(content);
          target.write(changed(source.getInputStream(entry).readAllBytes(), change));
          target.closeArchiveEntry();
        } else {
          target.addRawArchiveEntry(entry, source.getRawInputStream(entry));
        }
      }
    }
    return copy.toByteArray();
  }

  private static byte[] changed(byte[] content, Consumer<Document> change) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      // The default one prints.
      builder.setErrorHandler(new DefaultHandler());
      Document document = builder.parse(new ByteArrayInputStream(content));
      change.accept(document);
      ByteArrayOutputStream changed = new ByteArrayOutputStream();
      TransformerFactory.newDefaultInstance()
          .newTransformer()
          .transform(new DOMSource(document), new StreamResult(changed));
      return changed.toByteArray();
    } catch (ParserConfigurationException | SAXException | TransformerException problem) {
      throw new IOException(problem);
    }
  }
}
