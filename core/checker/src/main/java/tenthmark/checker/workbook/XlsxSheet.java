package tenthmark.checker.workbook;

import static tenthmark.checker.workbook.XlsxReader.attribute;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tenthmark.measurement.formula.CellRange;

/** A worksheet part of an .xlsx file while it is read. */
final class XlsxSheet {

  private static final LocalDate FIRST_DAY = LocalDate.of(1899, 12, 30);

  private final XMLStreamReader xml;
  private final List<String> texts;
  private final Map<Integer, NumberFormat> formats;
  private final TableReferences tables;
  private final Tally tally;
  private final String name;
  private final Sheet.Builder sheet;
  private final Map<String, SharedFormula> shared = new HashMap<>();
  private final List<CellRange> arrays = new ArrayList<>();
  private int row = -1;
  private int column = -1;

  XlsxSheet(
      XMLStreamReader xml,
      String name,
      boolean hidden,
      List<String> texts,
      Map<Integer, NumberFormat> formats,
      TableReferences tables,
      Tally tally) {
    this.xml = xml;
    this.name = name;
    this.texts = texts;
    this.formats = formats;
    this.tables = tables;
    this.tally = tally;
    this.sheet = new Sheet.Builder(name);
    if (hidden) {
      sheet.hide();
    }
  }

  Sheet.Builder read() throws XMLStreamException, UnreadableFileException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "row" -> startRow();
          case "c" -> readCell();
          case "mergeCell" -> merge();
          case "extLst" -> XmlPart.skip(xml);
          default -> {
            // Widths, formats, print settings and the like say nothing about the cells.
          }
        }
      }
    }
    for (CellRange array : arrays) {
      sheet.spread(array, tally);
    }
    return sheet;
  }

  private void startRow() {
    row = attribute(xml, "r").map(number -> Integer.parseInt(number) - 1).orElse(row + 1);
    column = -1;
  }

  private void merge() throws UnreadableFileException {
    tally.merged();
    sheet.merge(A1.range(name, attribute(xml, "ref").orElse("")));
  }

  private void readCell() throws XMLStreamException, UnreadableFileException {
    place();
    String type = attribute(xml, "t").orElse("n");
    NumberFormat format =
        attribute(xml, "s").map(Integer::valueOf).map(formats::get).orElse(NumberFormat.PLAIN);
    Optional<FormulaElement> formula = Optional.empty();
    Optional<String> value = Optional.empty();
    while (!ended("c")) {
      if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "f" -> formula = Optional.of(new FormulaElement());
          case "v" -> value = Optional.of(XlsxText.content(xml));
          case "is" -> value = Optional.of(XlsxText.rich(xml));
          default -> XmlPart.skip(xml);
        }
      }
    }
    Optional<Content> stored = value.flatMap(text -> content(type, text));
    Optional<Content> content = formula.isPresent() ? formula.get().content(stored) : stored;
    if (content.isPresent()) {
      tally.cell(content.get());
      sheet.put(column, row, content.get());
      sheet.format(column, row, format);
    }
  }

  /** A cell that does not say where it is stands right of the one before. */
  private void place() {
    CellRange cell =
        attribute(xml, "r")
            .map(reference -> A1.range(name, reference))
            .orElseGet(() -> new CellRange(name, column + 1, row, column + 1, row));
    column = cell.left();
    row = cell.top();
    if (row < 0 || row >= Limits.ROWS || column >= Limits.COLUMNS) {
      throw new IllegalArgumentException("a cell outside the sheet");
    }
  }

  private Optional<Content> content(String type, String value) {
    return switch (type) {
      case "s" -> Optional.of(new Content.Text(texts.get(Integer.parseInt(value.strip()))));
      case "str", "inlineStr" -> Optional.of(new Content.Text(XlsxText.unescaped(value)));
      case "b" -> Optional.of(new Content.Logical(XlsxText.isTrue(value.strip())));
      case "e" -> Optional.of(new Content.Error(value.strip()));
      case "d" -> Optional.of(Content.number(days(value.strip())));
      default ->
          value.isBlank()
              ? Optional.empty()
              : Optional.of(Content.number(Double.parseDouble(value.strip())));
    };
  }

  private static double days(String date) {
    String local = date.endsWith("Z") ? date.substring(0, date.length() - 1) : date;
    LocalDateTime moment =
        local.contains("T") ? LocalDateTime.parse(local) : LocalDate.parse(local).atStartOfDay();
    return ChronoUnit.DAYS.between(FIRST_DAY, moment.toLocalDate())
        + moment.toLocalTime().toNanoOfDay() / (double) Duration.ofDays(1).toNanos();
  }

  private boolean ended(String element) throws XMLStreamException {
    return xml.next() == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(element);
  }

  /** The formula of the cell at hand. */
  private final class FormulaElement {

    private final String type = attribute(xml, "t").orElse("normal");
    private final Optional<String> index = attribute(xml, "si");
    private final Optional<CellRange> area =
        attribute(xml, "ref").map(reference -> A1.range(name, reference));
    private final String text;

    FormulaElement() throws XMLStreamException {
      text = XlsxText.unescaped(XlsxText.content(xml)).replaceFirst("^=+", "");
    }

    Optional<Content> content(Optional<Content> stored) throws UnreadableFileException {
      return switch (type) {
        case "shared" -> Optional.of(formula(sharedText(), stored, Optional.empty()));
        case "array" -> Optional.of(formula(text, stored, array()));
        case "dataTable" -> stored;
        default -> text.isBlank() ? stored : Optional.of(formula(text, stored, Optional.empty()));
      };
    }

    private String sharedText() {
      if (text.isBlank()) {
        return index
            .map(shared::get)
            .map(original -> original.at(column, row))
            .orElseThrow(() -> new IllegalArgumentException("a shared formula that is nowhere"));
      }
      index.ifPresent(key -> shared.putIfAbsent(key, new SharedFormula(text, column, row)));
      return text;
    }

    private Optional<CellRange> array() throws UnreadableFileException {
      CellRange cells = area.orElseGet(() -> new CellRange(name, column, row, column, row));
      if (cells.left() == column && cells.top() == row) {
        tally.require((long) cells.height() * cells.width());
        arrays.add(cells);
      }
      return Optional.of(cells);
    }

    private Content formula(String written, Optional<Content> stored, Optional<CellRange> array) {
      String ranges = tables.asRanges(written, name, row);
      return new Content.Formula(written, FormulaText.uniform(ranges), stored, array);
    }
  }
}
