package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the content of an .ods file as a stream. A document library was weighed and left: odfdom
 * builds the whole tree and brings 27 jars.
 */
final class OdsReader {

  private OdsReader() {}

  static Workbook read(Archive archive, Limits limits) throws IOException, UnreadableFileException {
    try (InputStream stream = archive.part("content.xml")) {
      XMLStreamReader xml = factory().createXMLStreamReader(stream);
      try {
        return new OdsContent(xml, limits).read();
      } finally {
        xml.close();
      }
    } catch (TooLargeException tooLarge) {
      throw tooLarge.unreadable();
    } catch (XMLStreamException problem) {
      if (problem.getNestedException() instanceof TooLargeException tooLarge) {
        throw tooLarge.unreadable();
      }
      throw Archive.damaged(problem);
    } catch (java.util.zip.ZipException | java.io.EOFException damage) {
      throw Archive.damaged(damage);
    } catch (RuntimeException damage) {
      // Attributes that are no numbers, dates or areas where the format asks for them.
      throw Archive.damaged(damage);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }
}
