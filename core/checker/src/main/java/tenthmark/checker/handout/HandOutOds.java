package tenthmark.checker.handout;

import static tenthmark.checker.opendocument.ContentElements.COLUMNS_REPEATED;
import static tenthmark.checker.opendocument.ContentElements.OFFICE;
import static tenthmark.checker.opendocument.ContentElements.TABLE;
import static tenthmark.checker.opendocument.ContentElements.TEXT;
import static tenthmark.checker.opendocument.ContentElements.cells;
import static tenthmark.checker.opendocument.ContentElements.children;
import static tenthmark.checker.opendocument.ContentElements.paragraph;
import static tenthmark.checker.opendocument.ContentElements.repeated;
import static tenthmark.checker.opendocument.ContentElements.rows;
import static tenthmark.checker.opendocument.ContentElements.tables;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.reading.InsideProfile;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorkbookConvention;

/** Makes what is handed out of an .ods file (OASIS OpenDocument 1.3, part 3). */
final class HandOutOds {

  private static final String STYLE = "urn:oasis:names:tc:opendocument:xmlns:style:1.0";
  private static final String OPEN_PREFIX = "tenthmark-open-";
  private static final String STANDARD = "Default";
  private static final String STYLE_NAME = "style-name";
  private static final String STYLE_OF_CELLS = "default-cell-style-name";

  private final Document document;
  private final Map<String, String> open = new HashMap<>();
  private final Map<String, Element> styles = new HashMap<>();
  private final Element automatic;

  private HandOutOds(Document document) {
    this.document = document;
    this.automatic = automaticStyles();
    children(automatic, STYLE).stream()
        .filter(style -> style.getAttributeNS(STYLE, "family").equals("table-cell"))
        .forEach(style -> styles.put(style.getAttributeNS(STYLE, "name"), style));
  }

  static byte[] of(Path prepared, CourseSheet course) throws IOException {
    return ContentCopy.of(prepared, document -> new HandOutOds(document).change(course));
  }

  private Element automaticStyles() {
    Node found = document.getElementsByTagNameNS(OFFICE, "automatic-styles").item(0);
    if (found instanceof Element element) {
      return element;
    }
    Node body = document.getElementsByTagNameNS(OFFICE, "body").item(0);
    Element made = element(OFFICE, "office:automatic-styles");
    body.getParentNode().insertBefore(made, body);
    return made;
  }

  private void change(CourseSheet course) {
    List<Element> tables = tables(document);
    for (Element table : tables) {
      openBlanks(table);
      protect(table);
    }
    List<String> taken = tables.stream().map(table -> attribute(table, "name")).toList();
    String name = CourseSheet.name(taken);
    Element last = tables.get(tables.size() - 1);
    Element sheet = sheet(name, course);
    last.getParentNode().insertBefore(sheet, last.getNextSibling());
    names(sheet, name, course);
  }

  private static String attribute(Element element, String name) {
    return element.getAttributeNS(TABLE, name);
  }

  private static void protect(Element table) {
    table.setAttributeNS(TABLE, "table:protected", "true");
  }

  /** Cells have the style of their own, else of their row, else of their column. */
  private void openBlanks(Element table) {
    List<Span> columns = columns(table);
    for (Element row : rows(table)) {
      String ofRow = attribute(row, STYLE_OF_CELLS);
      int column = 0;
      for (Element cell : cells(row)) {
        int width = repeated(cell, COLUMNS_REPEATED);
        if (cell.getLocalName().equals("table-cell")) {
          openIfBlank(cell, ofRow.isEmpty() ? styleAt(column, columns) : ofRow);
        }
        column += width;
      }
      if (!ofRow.isEmpty()) {
        row.setAttributeNS(TABLE, "table:" + STYLE_OF_CELLS, open(ofRow));
      }
    }
    for (Span span : columns) {
      span.column().setAttributeNS(TABLE, "table:" + STYLE_OF_CELLS, open(span.style()));
    }
  }

  private void openIfBlank(Element cell, String inherited) {
    String own = attribute(cell, STYLE_NAME);
    String style = own.isEmpty() ? inherited : own;
    cell.setAttributeNS(TABLE, "table:" + STYLE_NAME, isBlank(cell) ? open(style) : style);
  }

  private static boolean isBlank(Element cell) {
    return !cell.hasAttributeNS(OFFICE, "value-type")
        && !cell.hasAttributeNS(TABLE, "formula")
        && children(cell, TEXT).isEmpty();
  }

  /** The columns that one element stands for, and the style that their cells have. */
  private record Span(Element column, int width, String style) {}

  private static List<Span> columns(Element table) {
    List<Span> spans = new ArrayList<>();
    NodeList all = table.getElementsByTagNameNS(TABLE, "table-column");
    for (int i = 0; i < all.getLength(); i++) {
      Element column = (Element) all.item(i);
      String style = attribute(column, STYLE_OF_CELLS);
      spans.add(
          new Span(column, repeated(column, COLUMNS_REPEATED), style.isEmpty() ? STANDARD : style));
    }
    return spans;
  }

  private static String styleAt(int column, List<Span> columns) {
    int first = 0;
    for (Span span : columns) {
      first += span.width();
      if (column < first) {
        return span.style();
      }
    }
    return STANDARD;
  }

  /** The same style for cells that can be filled in. */
  private String open(String style) {
    return open.computeIfAbsent(style, this::opened);
  }

  private String opened(String style) {
    String name = OPEN_PREFIX + (open.size() + 1);
    Element copy =
        Optional.ofNullable(styles.get(style))
            .map(known -> (Element) known.cloneNode(true))
            .orElseGet(() -> child(style));
    copy.setAttributeNS(STYLE, "style:name", name);
    properties(copy).setAttributeNS(STYLE, "style:cell-protect", "none");
    automatic.appendChild(copy);
    return name;
  }

  /** A style that says nothing but whose child it is. */
  private Element child(String parent) {
    Element style = element(STYLE, "style:style");
    style.setAttributeNS(STYLE, "style:family", "table-cell");
    style.setAttributeNS(STYLE, "style:parent-style-name", parent);
    return style;
  }

  private Element properties(Element style) {
    return children(style, STYLE).stream()
        .filter(child -> child.getLocalName().equals("table-cell-properties"))
        .findFirst()
        .orElseGet(
            () -> {
              Element made = element(STYLE, "style:table-cell-properties");
              style.insertBefore(made, style.getFirstChild());
              return made;
            });
  }

  private Element sheet(String name, CourseSheet course) {
    Element table = element(TABLE, "table:table");
    table.setAttributeNS(TABLE, "table:name", name);
    protect(table);
    Element columns = element(TABLE, "table:table-column");
    columns.setAttributeNS(TABLE, "table:" + COLUMNS_REPEATED, Integer.toString(CourseSheet.WIDTH));
    table.appendChild(columns);
    course.convention().forEach(row -> table.appendChild(row(row)));
    table.appendChild(row(List.of(Value.of(""))));
    course.profile().forEach(line -> table.appendChild(row(List.of(Value.of(line)))));
    return table;
  }

  private Element row(List<Value> values) {
    Element row = element(TABLE, "table:table-row");
    for (Value value : values) {
      Element cell = element(TABLE, "table:table-cell");
      if (value instanceof Value.Numeric number) {
        String plain = new BigDecimal(Double.toString(number.number())).toPlainString();
        cell.setAttributeNS(OFFICE, "office:value-type", "float");
        cell.setAttributeNS(OFFICE, "office:value", plain);
        paragraph(cell, plain);
      } else if (value instanceof Value.Text text && !text.text().isEmpty()) {
        // Spaces at the front would be lost in a paragraph.
        cell.setAttributeNS(OFFICE, "office:value-type", "string");
        cell.setAttributeNS(OFFICE, "office:string-value", text.text());
        spaced(cell, text.text());
      }
      row.appendChild(cell);
    }
    return row;
  }

  /** Programs join white space in a paragraph; an element stands for spaces that count. */
  private void spaced(Element cell, String text) {
    Element paragraph = element(TEXT, "text:p");
    int spaces = text.length() - text.stripLeading().length();
    if (spaces > 0) {
      Element space = element(TEXT, "text:s");
      space.setAttributeNS(TEXT, "text:c", Integer.toString(spaces));
      paragraph.appendChild(space);
    }
    paragraph.appendChild(document.createTextNode(text.substring(spaces)));
    cell.appendChild(paragraph);
  }

  private void names(Element sheet, String name, CourseSheet course) {
    Node spreadsheet = sheet.getParentNode();
    Element expressions =
        children(spreadsheet, TABLE).stream()
            .filter(child -> child.getLocalName().equals("named-expressions"))
            .findFirst()
            .orElseGet(
                () -> {
                  Element made = element(TABLE, "table:named-expressions");
                  spreadsheet.insertBefore(made, sheet.getNextSibling());
                  return made;
                });
    String quoted = "$'" + name + "'.";
    expressions.appendChild(
        range(WorkbookConvention.NAME, quoted, "$A$1:.$C$" + course.convention().size()));
    expressions.appendChild(
        range(
            InsideProfile.NAME,
            quoted,
            "$A$" + (course.profileTop() + 1) + ":.$A$" + (course.profileBottom() + 1)));
  }

  private Element range(String name, String sheet, String cells) {
    Element range = element(TABLE, "table:named-range");
    range.setAttributeNS(TABLE, "table:name", name);
    range.setAttributeNS(TABLE, "table:base-cell-address", sheet + "$A$1");
    range.setAttributeNS(TABLE, "table:cell-range-address", sheet + cells);
    return range;
  }

  private Element element(String namespace, String name) {
    return document.createElementNS(namespace, name);
  }
}
