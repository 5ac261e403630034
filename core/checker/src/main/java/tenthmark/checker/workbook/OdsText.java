package tenthmark.checker.workbook;

import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Texts within elements of an .ods file (OASIS OpenDocument 1.3, part 3, 5 and 6). */
final class OdsText {

  private static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";

  /** Passes over an element within a text that holds something else. */
  @FunctionalInterface
  interface Aside {

    /** Whether the element that begins here is none of the text; it is then read to its end. */
    boolean passes() throws XMLStreamException, UnreadableFileException;
  }

  private OdsText() {}

  /** The paragraphs up to the end of the element that begins here, one a line. */
  static String paragraphs(XMLStreamReader xml, Aside aside)
      throws XMLStreamException, UnreadableFileException {
    StringBuilder text = new StringBuilder();
    int paragraphs = 0;
    int open = 0;
    while (true) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT && !aside.passes()) {
        open++;
        if (isText(xml, "p") && paragraphs++ > 0) {
          text.append('\n');
        }
        text.append(blank(xml));
      } else if (event == XMLStreamConstants.END_ELEMENT && open-- == 0) {
        return text.toString();
      } else if (event == XMLStreamConstants.CHARACTERS && open > 0) {
        text.append(xml.getText());
      }
    }
  }

  /** Whether the element that begins here is one of a text. */
  static boolean isText(XMLStreamReader xml) {
    return TEXT.equals(xml.getNamespaceURI());
  }

  private static boolean isText(XMLStreamReader xml, String element) {
    return xml.getLocalName().equals(element) && isText(xml);
  }

  private static String blank(XMLStreamReader xml) {
    if (isText(xml, "s")) {
      int count =
          Optional.ofNullable(xml.getAttributeValue(TEXT, "c")).map(Integer::parseInt).orElse(1);
      return " ".repeat(Math.max(0, Math.min(count, 1000)));
    }
    return isText(xml, "tab") ? "\t" : isText(xml, "line-break") ? "\n" : "";
  }
}
