package tenthmark.checker.workbook;

import static tenthmark.checker.workbook.XlsxReader.attribute;

import java.util.HashSet;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The styles of an .xlsx workbook, as far as they say in which form numbers are shown. */
final class XlsxStyles {

  /** The formats 9 and 10 are 0% and 0.00% (ECMA-376 part 1, 18.8.30; from memory). */
  private static final Set<Integer> PERCENT = Set.of(9, 10);

  private XlsxStyles() {}

  /** The numbers of the cell styles that show percent. */
  static Set<Integer> inPercent(XMLStreamReader xml) throws XMLStreamException {
    Set<Integer> formats = new HashSet<>(PERCENT);
    Set<Integer> styles = new HashSet<>();
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
          if (NumberFormats.isPercent(attribute(xml, "formatCode").orElse(""))) {
            attribute(xml, "numFmtId").map(Integer::valueOf).ifPresent(formats::add);
          }
        }
        case "cellXfs" -> ofCells = true;
        case "xf" -> {
          if (ofCells
              && attribute(xml, "numFmtId")
                  .map(Integer::valueOf)
                  .filter(formats::contains)
                  .isPresent()) {
            styles.add(style);
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
