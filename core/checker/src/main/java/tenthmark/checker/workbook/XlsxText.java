package tenthmark.checker.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Texts in the parts of an .xlsx file. */
final class XlsxText {

  /** A character that XML cannot hold, by its number (ECMA-376, part 1, 22.4.2.4). */
  private static final Pattern ESCAPED = Pattern.compile("_x(?<code>[0-9A-Fa-f]{4})_");

  private XlsxText() {}

  /** The texts that the sheets share, by their place in the table. */
  static List<String> table(XMLStreamReader xml) throws XMLStreamException {
    List<String> texts = new ArrayList<>();
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("si")) {
        texts.add(rich(xml));
      }
    }
    return texts;
  }

  /** The text of an element of runs, without formats and without readings of Asian script. */
  static String rich(XMLStreamReader xml) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "t" -> text.append(unescaped(content(xml)));
          case "rPh", "rPr" -> XmlPart.skip(xml);
          default -> depth++;
        }
      }
    }
    return text.toString();
  }

  /** The characters up to the end of the element that begins here. */
  static String content(XMLStreamReader xml) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        XmlPart.skip(xml);
      } else if (event == XMLStreamConstants.CHARACTERS) {
        text.append(xml.getText());
      }
    }
    return text.toString();
  }

  static String unescaped(String text) {
    return text.contains("_x")
        ? ESCAPED
            .matcher(text)
            .replaceAll(
                found ->
                    Matcher.quoteReplacement(
                        String.valueOf((char) Integer.parseInt(found.group(1), 16))))
        : text;
  }

  static boolean isTrue(String logical) {
    return logical.equals("1") || logical.equals("true");
  }
}
