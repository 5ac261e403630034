package tenthmark.addin.generator;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Parses generated markup; text that is not well formed fails the test. */
final class Markups {

  private Markups() {}

  static Document parse(String text) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text)));
  }

  static List<Element> elements(Element parent, String name) {
    NodeList nodes = parent.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  static List<Element> children(Element parent, String name) {
    return elements(parent, name).stream()
        .filter(element -> element.getParentNode().equals(parent))
        .toList();
  }

  static List<String> texts(Element parent, String name) {
    return elements(parent, name).stream().map(Element::getTextContent).toList();
  }
}
