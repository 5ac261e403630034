package tenthmark.checker.workbook;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;

/**
 * Reads the XML parts of an archive as streams, so that a file takes the memory of its cells and no
 * more. Document libraries were weighed and left: XMLBeans and odfdom both build the whole tree.
 */
final class XmlPart {

  /** What is made of a part. */
  @FunctionalInterface
  interface Reading<T> {
    T of(XMLStreamReader xml) throws XMLStreamException, UnreadableFileException;
  }

  private XmlPart() {}

  /** Reads a part; an entity, a document type's use or any damage refuses the file. */
  static <T> T read(Archive archive, String part, Limits limits, Reading<T> reading)
      throws IOException, UnreadableFileException {
    try (InputStream stream = archive.part(part)) {
      XMLStreamReader xml = reader(stream);
      try {
        return reading.of(xml);
      } finally {
        xml.close();
      }
    } catch (TooLargeException tooLarge) {
      throw limits.tooLarge();
    } catch (XMLStreamException problem) {
      throw problem.getNestedException() instanceof TooLargeException
          ? limits.tooLarge()
          : Archive.damaged(problem);
    } catch (ZipException | EOFException | CharacterCodingException damage) {
      throw Archive.damaged(damage);
    } catch (OutOfTimeException over) {
      throw over;
    } catch (RuntimeException damage) {
      // Attributes that are no numbers, dates or areas where the format asks for them.
      throw Archive.damaged(damage);
    }
  }

  /** Passes over the element that begins here. */
  static void skip(XMLStreamReader xml) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    }
  }

  /**
   * A reader of UTF-8 or UTF-16, which are what both formats allow. Decoding is done here because
   * the JDK's own prints to standard error when it meets a wrong byte.
   */
  private static XMLStreamReader reader(InputStream stream) throws XMLStreamException, IOException {
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
}
