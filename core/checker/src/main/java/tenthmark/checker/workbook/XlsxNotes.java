package tenthmark.checker.workbook;

import static tenthmark.checker.workbook.XlsxReader.attribute;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tenthmark.measurement.formula.CellRange;

/**
 * The comments and the texts of drawings of a sheet of an .xlsx file (ECMA-376, part 1, 18.7 and
 * 20.5), and comments that are threads (MS-XLSX 2.6.205).
 */
final class XlsxNotes {

  /** How the name of an author begins where a comment only says that there is a thread. */
  private static final String THREAD = "tc=";

  private final String name;
  private final Sheet.Builder sheet;
  private final Tally tally;
  private boolean threads;

  XlsxNotes(String name, Sheet.Builder sheet, Tally tally) {
    this.name = name;
    this.sheet = sheet;
    this.tally = tally;
  }

  /** Reads threads, which come before the comments that stand in for them. */
  Void threads(XMLStreamReader xml) throws XMLStreamException, UnreadableFileException {
    CellRange cell = new CellRange(name, 0, 0, 0, 0);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "threadedComment" -> cell = A1.range(name, attribute(xml, "ref").orElse(""));
          case "text" -> {
            threads = true;
            comment(cell, "", XlsxText.content(xml));
          }
          default -> {
            // Who wrote it when, and whom it mentions.
          }
        }
      }
    }
    return null;
  }

  Void comments(XMLStreamReader xml) throws XMLStreamException, UnreadableFileException {
    List<String> authors = new ArrayList<>();
    CellRange cell = new CellRange(name, 0, 0, 0, 0);
    String author = "";
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "author" -> authors.add(XlsxText.unescaped(XlsxText.content(xml)));
          case "comment" -> {
            cell = A1.range(name, attribute(xml, "ref").orElse(""));
            int number = attribute(xml, "authorId").map(Integer::parseInt).orElse(0);
            author = number >= 0 && number < authors.size() ? authors.get(number) : "";
          }
          case "text" -> {
            String text = XlsxText.rich(xml);
            if (!threads || !author.startsWith(THREAD)) {
              comment(cell, author, text);
            }
          }
          default -> {
            // How the comment looks.
          }
        }
      }
    }
    return null;
  }

  private void comment(CellRange cell, String author, String text) throws UnreadableFileException {
    tally.note();
    sheet.comment(cell.left(), cell.top(), author, text);
  }

  /** Reads a drawing: each of its shapes lies at the cell where its anchor begins. */
  Void drawing(XMLStreamReader xml) throws XMLStreamException, UnreadableFileException {
    int column = 0;
    int row = 0;
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "absoluteAnchor" -> {
            column = 0;
            row = 0;
          }
          case "col" -> column = place(xml, Limits.COLUMNS);
          case "row" -> row = place(xml, Limits.ROWS);
          case "sp" -> {
            tally.note();
            sheet.box(column, row, shape(xml));
          }
          case "to", "Fallback" -> XmlPart.skip(xml);
          default -> {
            // Pictures, graphs and the looks of shapes.
          }
        }
      }
    }
    return null;
  }

  private static int place(XMLStreamReader xml, int most) throws XMLStreamException {
    int place = Integer.parseInt(XlsxText.content(xml).strip());
    if (place < 0 || place >= most) {
      throw new IllegalArgumentException("a drawing outside the sheet");
    }
    return place;
  }

  /** The paragraphs of a shape. */
  private static String shape(XMLStreamReader xml) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "t" -> text.append(XlsxText.content(xml));
          case "Fallback" -> XmlPart.skip(xml);
          case "p", "br" -> {
            text.append('\n');
            depth++;
          }
          default -> depth++;
        }
      }
    }
    return text.toString();
  }
}
