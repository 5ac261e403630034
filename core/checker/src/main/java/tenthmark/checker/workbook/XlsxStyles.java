package tenthmark.checker.workbook;

import static tenthmark.checker.workbook.XlsxReader.attribute;

import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The styles of an .xlsx workbook, as far as they say in which form numbers are shown. */
final class XlsxStyles {

  /** The formats 9 and 10 are 0% and 0.00% (ECMA-376 part 1, 18.8.30; from memory). */
  private static final Map<Integer, NumberFormat> BUILT_IN =
      Map.of(9, NumberFormat.of("0%"), 10, NumberFormat.of("0.00%"));

  private XlsxStyles() {}

  /** What the cell styles show of numbers besides their digits, by the style's number. */
  static Map<Integer, NumberFormat> formats(XMLStreamReader xml) throws XMLStreamException {
    Map<Integer, NumberFormat> formats = new HashMap<>(BUILT_IN);
    Map<Integer, NumberFormat> styles = new HashMap<>();
    boolean ofCells = false;
    int style = 0;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("cellXfs")) {
        return styles;
      }
      if (event != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "numFmt" -> {
          NumberFormat format = NumberFormat.of(attribute(xml, "formatCode").orElse(""));
          attribute(xml, "numFmtId")
              .map(Integer::valueOf)
              .filter(id -> !format.equals(NumberFormat.PLAIN))
              .ifPresent(id -> formats.put(id, format));
        }
        case "cellXfs" -> ofCells = true;
        case "xf" -> {
          NumberFormat format =
              attribute(xml, "numFmtId").map(Integer::valueOf).map(formats::get).orElse(null);
          if (ofCells && format != null) {
            styles.put(style, format);
          }
          style += ofCells ? 1 : 0;
        }
        default -> {
          // Fonts, fills and borders say nothing about the numbers.
        }
      }
    }
    return styles;
  }
}
