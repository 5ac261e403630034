package tenthmark.checker.copy;

import static tenthmark.checker.opendocument.ContentElements.COLUMNS_REPEATED;
import static tenthmark.checker.opendocument.ContentElements.OFFICE;
import static tenthmark.checker.opendocument.ContentElements.ROWS_REPEATED;
import static tenthmark.checker.opendocument.ContentElements.TABLE;
import static tenthmark.checker.opendocument.ContentElements.children;
import static tenthmark.checker.opendocument.ContentElements.paragraph;
import static tenthmark.checker.opendocument.ContentElements.repeated;

import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import tenthmark.checker.opendocument.ContentElements;
import tenthmark.measurement.formula.CellAddress;

/** Adds comments and the findings sheet to a content.xml (OASIS OpenDocument 1.3, part 3). */
final class ContentAnnotator {

  private static final String STYLE = "urn:oasis:names:tc:opendocument:xmlns:style:1.0";
  private static final String FORMAT =
      "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0";
  private static final String CREATOR = "http://purl.org/dc/elements/1.1/";

  private static final String STYLE_PREFIX = "tenthmark-findings-";
  private static final String[] WIDTHS = {"30mm", "15mm", "20mm", "80mm", "80mm", "80mm", "80mm"};

  private final Document document;

  ContentAnnotator(Document document) {
    this.document = document;
  }

  void annotate(Annotations annotations) {
    List<Element> tables = ContentElements.tables(document);
    Node spreadsheet = tables.get(0).getParentNode();
    for (Map.Entry<CellAddress, String> comment : annotations.comments().entrySet()) {
      CellAddress place = comment.getKey();
      tables.stream()
          .filter(table -> table.getAttributeNS(TABLE, "name").equals(place.sheet()))
          .findFirst()
          .ifPresent(table -> comment(cell(row(table, place.row()), place), comment.getValue()));
    }
    styles();
    spreadsheet.insertBefore(findings(annotations, names(tables)), place(spreadsheet, tables));
  }

  private static List<String> names(List<Element> tables) {
    return tables.stream().map(table -> table.getAttributeNS(TABLE, "name")).toList();
  }

  /** In front, unless recorded changes count the tables: then behind the last. */
  private static Node place(Node spreadsheet, List<Element> tables) {
    boolean counted =
        children(spreadsheet, TABLE).stream()
            .anyMatch(child -> child.getLocalName().equals("tracked-changes"));
    return counted ? tables.get(tables.size() - 1).getNextSibling() : tables.get(0);
  }

  /** The row with a number, by itself; it is made if the table is shorter. */
  private Element row(Element table, int number) {
    List<Element> rows = ContentElements.rows(table);
    int first = 0;
    for (Element row : rows) {
      int repeated = repeated(row, ROWS_REPEATED);
      if (number < first + repeated) {
        return single(row, ROWS_REPEATED, number - first);
      }
      first += repeated;
    }
    Node behind = rows.isEmpty() ? null : below(table, rows.get(rows.size() - 1)).getNextSibling();
    if (number > first) {
      Element gap = element(TABLE, "table:table-row");
      gap.appendChild(element(TABLE, "table:table-cell"));
      repeat(gap, ROWS_REPEATED, number - first);
      table.insertBefore(gap, behind);
    }
    Element row = element(TABLE, "table:table-row");
    table.insertBefore(row, behind);
    return row;
  }

  /** The child of the table that a row stands in. */
  private static Node below(Element table, Node row) {
    Node child = row;
    while (child.getParentNode() != table) {
      child = child.getParentNode();
    }
    return child;
  }

  /** The cell in a column, by itself; it is made if the row is shorter. */
  private Element cell(Element row, CellAddress place) {
    int first = 0;
    for (Element cell : ContentElements.cells(row)) {
      int repeated = repeated(cell, COLUMNS_REPEATED);
      if (place.column() < first + repeated) {
        return single(cell, COLUMNS_REPEATED, place.column() - first);
      }
      first += repeated;
    }
    if (place.column() > first) {
      Element gap = element(TABLE, "table:table-cell");
      repeat(gap, COLUMNS_REPEATED, place.column() - first);
      row.appendChild(gap);
    }
    Element cell = element(TABLE, "table:table-cell");
    row.appendChild(cell);
    return cell;
  }

  /** One of the rows or cells that an element stands for; copies stand for those around it. */
  private static Element single(Element element, String attribute, int before) {
    int after = repeated(element, attribute) - before - 1;
    Node parent = element.getParentNode();
    if (before > 0) {
      parent.insertBefore(copy(element, attribute, before), element);
    }
    if (after > 0) {
      parent.insertBefore(copy(element, attribute, after), element.getNextSibling());
    }
    repeat(element, attribute, 1);
    return element;
  }

  private static Element copy(Element element, String attribute, int times) {
    Element copy = (Element) element.cloneNode(true);
    repeat(copy, attribute, times);
    return copy;
  }

  private static void repeat(Element element, String attribute, int times) {
    element.removeAttributeNS(TABLE, attribute);
    if (times > 1) {
      element.setAttributeNS(TABLE, "table:" + attribute, Integer.toString(times));
    }
  }

  /**
   * A comment stands before the text of its cell, but after the source of linked cells; a student's
   * own stays alone.
   */
  private void comment(Element cell, String text) {
    boolean taken =
        children(cell, OFFICE).stream()
            .anyMatch(child -> child.getLocalName().equals("annotation"));
    if (taken) {
      return;
    }
    Element comment = element(OFFICE, "office:annotation");
    Element creator = element(CREATOR, "dc:creator");
    creator.setTextContent(Annotations.AUTHOR);
    comment.appendChild(creator);
    Node first = cell.getFirstChild();
    boolean linked = first != null && isNamed(first, TABLE, "cell-range-source");
    cell.insertBefore(comment, linked ? first.getNextSibling() : first);
    text.lines().forEach(line -> paragraph(comment, line));
  }

  private Element findings(Annotations annotations, List<String> taken) {
    Element table = element(TABLE, "table:table");
    table.setAttributeNS(TABLE, "table:name", annotations.sheetName(taken));
    for (int column = 0; column < WIDTHS.length; column++) {
      Element width = element(TABLE, "table:table-column");
      width.setAttributeNS(TABLE, "table:style-name", STYLE_PREFIX + "column-" + (column + 1));
      table.appendChild(width);
    }
    for (String line : annotations.preface()) {
      row(table, List.of(line), table.getElementsByTagNameNS(TABLE, "table-row").getLength() == 0);
    }
    if (!annotations.rows().isEmpty()) {
      row(table, List.of(""), false);
      row(table, annotations.headings(), true);
    }
    annotations.rows().forEach(texts -> row(table, texts, false));
    return table;
  }

  private void row(Element table, List<String> texts, boolean heading) {
    Element row = element(TABLE, "table:table-row");
    String style = heading ? "heading" : texts.size() > 1 ? "text" : "line";
    for (String text : texts) {
      Element cell = element(TABLE, "table:table-cell");
      cell.setAttributeNS(TABLE, "table:style-name", STYLE_PREFIX + style);
      if (!text.isEmpty()) {
        cell.setAttributeNS(OFFICE, "office:value-type", "string");
        text.lines().forEach(line -> paragraph(cell, line));
      }
      row.appendChild(cell);
    }
    table.appendChild(row);
  }

  private void styles() {
    Node found = document.getElementsByTagNameNS(OFFICE, "automatic-styles").item(0);
    if (found == null) {
      Node body = document.getElementsByTagNameNS(OFFICE, "body").item(0);
      found = element(OFFICE, "office:automatic-styles");
      body.getParentNode().insertBefore(found, body);
    }
    for (int column = 0; column < WIDTHS.length; column++) {
      Element properties =
          style(found, "table-column", "column-" + (column + 1), "table-column-properties");
      properties.setAttributeNS(STYLE, "style:column-width", WIDTHS[column]);
    }
    style(found, "table-cell", "heading", "text-properties")
        .setAttributeNS(FORMAT, "fo:font-weight", "bold");
    style(found, "table-cell", "line", "table-cell-properties");
    Element text = style(found, "table-cell", "text", "table-cell-properties");
    text.setAttributeNS(FORMAT, "fo:wrap-option", "wrap");
    text.setAttributeNS(STYLE, "style:vertical-align", "top");
  }

  private Element style(Node styles, String family, String name, String properties) {
    Element style = element(STYLE, "style:style");
    style.setAttributeNS(STYLE, "style:name", STYLE_PREFIX + name);
    style.setAttributeNS(STYLE, "style:family", family);
    Element content = element(STYLE, "style:" + properties);
    style.appendChild(content);
    styles.appendChild(style);
    return content;
  }

  private Element element(String namespace, String name) {
    return document.createElementNS(namespace, name);
  }

  private static boolean isNamed(Node node, String namespace, String name) {
    return namespace.equals(node.getNamespaceURI()) && name.equals(node.getLocalName());
  }
}
