package tenthmark.checker.plain;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/**
 * Changes cells in a copy of an .ods file (OASIS OpenDocument 1.3, part 3); every part but the
 * content is copied byte for byte.
 */
final class PlainOds {

  private static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
  private static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
  private static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";
  private static final String CALC_EXTENSION =
      "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0";

  private static final String CONTENT = "content.xml";

  /** Elements of a table that hold rows. */
  private static final Set<String> ROW_HOLDERS =
      Set.of("table-header-rows", "table-row-group", "table-rows");

  private static final List<String> VALUE_ATTRIBUTES =
      List.of(
          "value-type",
          "value",
          "date-value",
          "time-value",
          "boolean-value",
          "string-value",
          "currency");

  private final Document content;
  private final Map<CellAddress, CellChange> changes;

  private PlainOds(Document content, List<CellChange> changes) {
    this.content = content;
    this.changes =
        changes.stream().collect(Collectors.toMap(CellChange::cell, Function.identity()));
  }

  static void write(Path source, Path target, List<CellChange> changes) throws IOException {
    try (ZipFile zip = new ZipFile(source.toFile());
        ZipOutputStream copy = new ZipOutputStream(Files.newOutputStream(target))) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        byte[] part = zip.getInputStream(entry).readAllBytes();
        put(copy, entry, entry.getName().equals(CONTENT) ? changed(part, changes) : part);
      }
    }
  }

  /** Keeps the method, because the mimetype must not be compressed (OpenDocument 1.3, part 2). */
  private static void put(ZipOutputStream copy, ZipEntry original, byte[] part) throws IOException {
    ZipEntry entry = new ZipEntry(original.getName());
    entry.setTime(original.getTime());
    entry.setMethod(original.getMethod());
    if (original.getMethod() == ZipEntry.STORED) {
      CRC32 sum = new CRC32();
      sum.update(part);
      entry.setSize(part.length);
      entry.setCrc(sum.getValue());
    }
    copy.putNextEntry(entry);
    copy.write(part);
    copy.closeEntry();
  }

  private static byte[] changed(byte[] part, List<CellChange> changes) throws IOException {
    try {
      Document content = parse(part);
      new PlainOds(content, changes).apply();
      ByteArrayOutputStream changed = new ByteArrayOutputStream();
      TransformerFactory.newDefaultInstance()
          .newTransformer()
          .transform(new DOMSource(content), new StreamResult(changed));
      return changed.toByteArray();
    } catch (ParserConfigurationException | SAXException | TransformerException damage) {
      throw new IOException(damage);
    }
  }

  private static Document parse(byte[] part)
      throws ParserConfigurationException, SAXException, IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    try (InputStream stream = new ByteArrayInputStream(part)) {
      return factory.newDocumentBuilder().parse(stream);
    }
  }

  private void apply() {
    var sheets = content.getElementsByTagNameNS(OFFICE, "spreadsheet");
    for (int i = 0; i < sheets.getLength(); i++) {
      children(sheets.item(i), TABLE).stream()
          .filter(child -> child.getLocalName().equals("table"))
          .forEach(table -> rows(table, table.getAttributeNS(TABLE, "name"), 0));
    }
  }

  /** Goes through the rows of a table or of a group of rows; gives the number of the next row. */
  private int rows(Element holder, String sheet, int first) {
    int row = first;
    for (Element child : children(holder, TABLE)) {
      if (ROW_HOLDERS.contains(child.getLocalName())) {
        row = rows(child, sheet, row);
      } else if (child.getLocalName().equals("table-row")) {
        cells(child, sheet, row);
        row += repeated(child, "number-rows-repeated");
      }
    }
    return row;
  }

  private void cells(Element row, String sheet, int number) {
    int column = 0;
    for (Element cell : children(row, TABLE)) {
      CellChange change = changes.get(new CellAddress(sheet, column, number));
      if (change != null) {
        apply(change, cell);
      }
      column += repeated(cell, "number-columns-repeated");
    }
  }

  private static int repeated(Element element, String attribute) {
    String count = element.getAttributeNS(TABLE, attribute);
    return count.isEmpty() ? 1 : Integer.parseInt(count);
  }

  private void apply(CellChange change, Element cell) {
    if (!change.keepsFormula()) {
      cell.removeAttributeNS(TABLE, "formula");
      cell.removeAttributeNS(TABLE, "number-matrix-columns-spanned");
      cell.removeAttributeNS(TABLE, "number-matrix-rows-spanned");
    }
    String shownAs = cell.getAttributeNS(OFFICE, "value-type");
    VALUE_ATTRIBUTES.forEach(attribute -> cell.removeAttributeNS(OFFICE, attribute));
    cell.removeAttributeNS(CALC_EXTENSION, "value-type");
    children(cell, TEXT).stream()
        .filter(child -> child.getLocalName().equals("p"))
        .forEach(cell::removeChild);
    if (change.value() instanceof Value.Numeric number) {
      String plain = new BigDecimal(Double.toString(number.number())).toString();
      cell.setAttributeNS(
          OFFICE, "office:value-type", shownAs.equals("percentage") ? shownAs : "float");
      cell.setAttributeNS(OFFICE, "office:value", plain);
      paragraph(cell, plain);
    } else {
      cell.setAttributeNS(OFFICE, "office:value-type", "string");
      cell.setAttributeNS(OFFICE, "office:string-value", text(change.value()));
      text(change.value()).lines().forEach(line -> paragraph(cell, line));
    }
  }

  private static String text(Value value) {
    if (value instanceof Value.Fault fault) {
      return fault.reason();
    }
    return value instanceof Value.Text text ? text.text() : "";
  }

  private void paragraph(Element cell, String line) {
    Element paragraph = content.createElementNS(TEXT, "text:p");
    paragraph.setTextContent(line);
    cell.appendChild(paragraph);
  }

  private static List<Element> children(Node parent, String namespace) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && namespace.equals(element.getNamespaceURI())) {
        children.add(element);
      }
    }
    return children;
  }
}
