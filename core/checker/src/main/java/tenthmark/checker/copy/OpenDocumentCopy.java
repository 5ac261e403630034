package tenthmark.checker.copy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
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

/** Annotates .ods files: every part but the content is copied as it is, in the same order. */
final class OpenDocumentCopy {

  private static final String CONTENT = "content.xml";

  private OpenDocumentCopy() {}

  static byte[] of(Path original, Annotations annotations) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    try (ZipFile source = ZipFile.builder().setPath(original).get();
        ZipArchiveOutputStream target = new ZipArchiveOutputStream(copy)) {
      for (ZipArchiveEntry entry : Collections.list(source.getEntriesInPhysicalOrder())) {
        if (entry.getName().equals(CONTENT)) {
          ZipArchiveEntry content = new ZipArchiveEntry(CONTENT);
          content.setTime(entry.getTime());
          target.putArchiveEntry(content);
          target.write(annotated(source.getInputStream(entry).readAllBytes(), annotations));
          target.closeArchiveEntry();
        } else {
          target.addRawArchiveEntry(entry, source.getRawInputStream(entry));
        }
      }
    }
    return copy.toByteArray();
  }

  private static byte[] annotated(byte[] content, Annotations annotations) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(content));
      new ContentAnnotator(document).annotate(annotations);
      ByteArrayOutputStream annotated = new ByteArrayOutputStream();
      TransformerFactory.newDefaultInstance()
          .newTransformer()
          .transform(new DOMSource(document), new StreamResult(annotated));
      return annotated.toByteArray();
    } catch (ParserConfigurationException | SAXException | TransformerException problem) {
      throw new IOException(problem);
    }
  }
}
