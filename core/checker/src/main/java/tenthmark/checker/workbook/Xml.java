package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;

/** XML out of files that nobody vouches for: no document type, no entities, nothing fetched. */
final class Xml {

  private Xml() {}

  /**
   * A reader of UTF-8 or UTF-16, which are what both formats allow. Decoding is done here because
   * the JDK's own prints to standard error when it meets a wrong byte.
   */
  static XMLStreamReader reader(InputStream stream) throws XMLStreamException, IOException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory.createXMLStreamReader(decoded(stream));
  }

  private static Reader decoded(InputStream stream) throws IOException {
    BOMInputStream marked =
        BOMInputStream.builder()
            .setInputStream(stream)
            .setByteOrderMarks(ByteOrderMark.UTF_8, ByteOrderMark.UTF_16BE, ByteOrderMark.UTF_16LE)
            .get();
    Charset charset =
        marked.hasBOM() ? Charset.forName(marked.getBOMCharsetName()) : StandardCharsets.UTF_8;
    return new InputStreamReader(marked, charset.newDecoder());
  }

  /** Reads to the end, so that what is not well formed is found before another parser sees it. */
  static void requireWellFormed(InputStream stream) throws UnreadableFileException {
    try {
      XMLStreamReader xml = reader(stream);
      while (xml.hasNext()) {
        xml.next();
      }
      xml.close();
    } catch (XMLStreamException | IOException | RuntimeException problem) {
      throw unreadable(problem);
    }
  }

  /** The one line for whatever went wrong while XML was read. */
  static UnreadableFileException unreadable(Exception problem) {
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof TooLargeException tooLarge) {
        return tooLarge.unreadable();
      }
    }
    boolean nested =
        problem instanceof XMLStreamException stream
            && stream.getNestedException() instanceof TooLargeException;
    return nested ? new TooLargeException().unreadable() : Archive.damaged(problem);
  }
}
