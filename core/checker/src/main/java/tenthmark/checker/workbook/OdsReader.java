package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the content of an .ods file as a stream. A document library was weighed and left: odfdom
 * builds the whole tree and brings 27 jars.
 */
final class OdsReader {

  private OdsReader() {}

  static Workbook read(Archive archive, Limits limits) throws UnreadableFileException {
    try (InputStream stream = archive.part("content.xml")) {
      XMLStreamReader xml = Xml.reader(stream);
      try {
        return new OdsContent(xml, limits).read();
      } finally {
        xml.close();
      }
    } catch (XMLStreamException | IOException | RuntimeException problem) {
      // Runtime exceptions: attributes that are no numbers, dates or areas where they must be.
      throw Xml.unreadable(problem);
    }
  }
}
