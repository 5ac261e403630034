package tenthmark.checker.workbook;

import static tenthmark.checker.workbook.XlsxReader.attribute;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tenthmark.measurement.formula.CellRange;

/**
 * A named table of an .xlsx file (ECMA-376, part 1, 18.5.1.2).
 *
 * @param name by which formulas call it
 * @param area all its cells
 * @param headings rows of headings at its top
 * @param totals rows of totals at its foot
 * @param columns the names of its columns
 */
record XlsxTable(String name, CellRange area, int headings, int totals, List<String> columns) {

  static XlsxTable read(XMLStreamReader xml, String sheet, Tally tally)
      throws XMLStreamException, UnreadableFileException {
    String name = "";
    CellRange area = new CellRange(sheet, 0, 0, 0, 0);
    int headings = 1;
    int totals = 0;
    List<String> columns = new ArrayList<>();
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "table" -> {
            tally.name();
            name = attribute(xml, "displayName").or(() -> attribute(xml, "name")).orElse("");
            area = A1.range(sheet, attribute(xml, "ref").orElse(""));
            headings = rows(xml, "headerRowCount", 1);
            totals = rows(xml, "totalsRowCount", 0);
          }
          case "tableColumn" -> {
            tally.name();
            columns.add(XlsxText.unescaped(attribute(xml, "name").orElse("")));
          }
          default -> {
            // Filters, sorting and styles say nothing about the cells.
          }
        }
      }
    }
    return new XlsxTable(name, area, headings, totals, columns);
  }

  private static int rows(XMLStreamReader xml, String attribute, int otherwise) {
    return attribute(xml, attribute).map(Integer::parseInt).orElse(otherwise);
  }

  /** Rows of the sheet from one to another. */
  private record Rows(int top, int bottom) {

    Rows with(Rows other) {
      return new Rows(Math.min(top, other.top()), Math.max(bottom, other.bottom()));
    }
  }

  /**
   * The range that keywords, in lower case, and no, one or the first and last of several columns
   * stand for; an error where the table has no such rows; nothing where they are unknown.
   */
  Optional<String> range(List<String> keywords, List<String> names, String sheet, int row) {
    List<Integer> found = names.stream().map(this::column).toList();
    if (found.contains(-1) || found.size() > 2) {
      return Optional.empty();
    }
    int left = area.left() + found.stream().min(Integer::compare).orElse(0);
    int right =
        found.isEmpty() ? area.right() : area.left() + found.stream().max(Integer::compare).get();
    if (keywords.contains("#this row")) {
      return keywords.size() > 1 || !sheet.equalsIgnoreCase(area.sheet())
          ? Optional.empty()
          : Optional.of(
              row < data().top() || row > data().bottom()
                  ? "#VALUE!"
                  : written("", left, right, "", new Rows(row, row)));
    }
    Optional<Rows> rows = Optional.empty();
    for (String keyword : keywords.isEmpty() ? List.of("#data") : keywords) {
      Optional<Rows> more = rows(keyword);
      if (more.isEmpty()) {
        return Optional.empty();
      }
      rows = rows.map(before -> before.with(more.get())).or(() -> more);
    }
    String place = sheet.equalsIgnoreCase(area.sheet()) ? "" : quoted(area.sheet()) + "!";
    return rows.map(
        all -> all.top() > all.bottom() ? "#REF!" : written(place, left, right, "$", all));
  }

  private int column(String name) {
    return IntStream.range(0, columns.size())
        .filter(index -> columns.get(index).equalsIgnoreCase(name))
        .findFirst()
        .orElse(-1);
  }

  private Rows data() {
    return new Rows(area.top() + headings, area.bottom() - totals);
  }

  /** None at all where the table leaves them out. */
  private Optional<Rows> rows(String keyword) {
    return switch (keyword) {
      case "#all" -> Optional.of(new Rows(area.top(), area.bottom()));
      case "#data" -> Optional.of(data());
      case "#headers" -> Optional.of(new Rows(area.top(), area.top() + headings - 1));
      case "#totals" -> Optional.of(new Rows(area.bottom() - totals + 1, area.bottom()));
      default -> Optional.empty();
    };
  }

  private static String quoted(String sheet) {
    return "'" + sheet.replace("'", "''") + "'";
  }

  private static String written(String place, int left, int right, String fixed, Rows rows) {
    String first = "$" + A1.letters(left) + fixed + (rows.top() + 1);
    String last = "$" + A1.letters(right) + fixed + (rows.bottom() + 1);
    return place + (first.equals(last) ? first : first + ":" + last);
  }
}
