package tenthmark.checker.opendocument;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The elements of a content.xml (OASIS OpenDocument 1.3, part 3). */
public final class ContentElements {

  /** Namespace of documents. */
  public static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";

  /** Namespace of tables. */
  public static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";

  /** Namespace of text. */
  public static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";

  /** How many rows a row element stands for. */
  public static final String ROWS_REPEATED = "number-rows-repeated";

  /** How many cells a cell element stands for. */
  public static final String COLUMNS_REPEATED = "number-columns-repeated";

  /** Elements of a table that hold rows. */
  private static final Set<String> ROW_HOLDERS =
      Set.of("table-header-rows", "table-row-group", "table-rows");

  private static final Set<String> CELLS = Set.of("table-cell", "covered-table-cell");

  private ContentElements() {}

  /** The tables of the spreadsheet, in order. */
  public static List<Element> tables(Document content) {
    Node spreadsheet = content.getElementsByTagNameNS(OFFICE, "spreadsheet").item(0);
    return children(spreadsheet, TABLE).stream()
        .filter(child -> child.getLocalName().equals("table"))
        .toList();
  }

  /** The rows of a table, those in groups too. */
  public static List<Element> rows(Element table) {
    List<Element> rows = new ArrayList<>();
    collectRows(table, rows);
    return rows;
  }

  private static void collectRows(Element holder, List<Element> rows) {
    for (Element child : children(holder, TABLE)) {
      if (ROW_HOLDERS.contains(child.getLocalName())) {
        collectRows(child, rows);
      } else if (child.getLocalName().equals("table-row")) {
        rows.add(child);
      }
    }
  }

  /** The cells of a row, covered ones too. */
  public static List<Element> cells(Element row) {
    return children(row, TABLE).stream()
        .filter(child -> CELLS.contains(child.getLocalName()))
        .toList();
  }

  /** How many rows or cells an element stands for. */
  public static int repeated(Element element, String attribute) {
    String count = element.getAttributeNS(TABLE, attribute);
    return count.isEmpty() ? 1 : Integer.parseInt(count);
  }

  /** The elements below a node in a namespace. */
  public static List<Element> children(Node parent, String namespace) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && namespace.equals(element.getNamespaceURI())) {
        children.add(element);
      }
    }
    return children;
  }

  /** Adds a paragraph of text. */
  public static void paragraph(Element parent, String line) {
    Element paragraph = parent.getOwnerDocument().createElementNS(TEXT, "text:p");
    paragraph.setTextContent(line);
    parent.appendChild(paragraph);
  }
}
