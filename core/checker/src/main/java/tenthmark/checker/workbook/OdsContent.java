package tenthmark.checker.workbook;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.NamedFormula;
import tenthmark.measurement.formula.SheetSize;

/** The content.xml of an .ods file (OASIS OpenDocument 1.3, part 3) as a workbook. */
final class OdsContent {

  private static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
  private static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
  private static final String STYLE = "urn:oasis:names:tc:opendocument:xmlns:style:1.0";
  private static final String DRAW = "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0";
  private static final String SVG = "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0";
  private static final String CREATOR = "http://purl.org/dc/elements/1.1/";
  private static final String CALC_EXTENSION =
      "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0";

  /** Elements whose tables or texts are no cells: deleted ones, graphs, linked data. */
  private static final Set<String> ASIDE =
      Set.of(
          "consolidation",
          "content-validations",
          "data-pilot-tables",
          "database-ranges",
          "dde-links",
          "desc",
          "forms",
          "object",
          "title",
          "tracked-changes");

  /** Width of a column and height of a row, in millimetres, where no style states it. */
  private static final double COLUMN = 22.58;

  private static final double ROW = 4.52;

  private static final Pattern ERROR_NAME =
      Pattern.compile("Err:\\d+|#(?:N/A|NAME\\?|(?:DIV/0|NULL|NUM|REF|VALUE)!)");

  private final XMLStreamReader xml;
  private final Limits limits;
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<DefinedName> names = new ArrayList<>();
  private final Set<String> hiddenStyles = new HashSet<>();
  private final Map<String, Double> lengths = new HashMap<>();
  private LocalDate firstDay = LocalDate.of(1899, 12, 30);
  private final Tally tally;

  OdsContent(XMLStreamReader xml, Limits limits) {
    this.xml = xml;
    this.limits = limits;
    this.tally = new Tally(limits);
  }

  Workbook read() throws XMLStreamException, UnreadableFileException {
    String style = "";
    boolean spreadsheet = false;
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT || isDrawn() || skipped()) {
        continue;
      }
      spreadsheet |= at(OFFICE, "spreadsheet");
      if (at(STYLE, "style")) {
        style = attribute(STYLE, "name").orElse("");
      } else if (at(STYLE, "table-properties")) {
        if (attribute(TABLE, "display").orElse("").equals("false")) {
          hiddenStyles.add(style);
        }
      } else if (at(STYLE, "table-column-properties")) {
        addLength(style, "column-width");
      } else if (at(STYLE, "table-row-properties")) {
        addLength(style, "row-height");
      } else if (at(TABLE, "null-date")) {
        attribute(TABLE, "date-value").map(LocalDate::parse).ifPresent(day -> firstDay = day);
      } else if (at(TABLE, "table")) {
        sheets.add(new Table().read());
      } else {
        addDefinedName(Optional.empty());
      }
    }
    if (!spreadsheet) {
      throw new UnreadableFileException("the file is damaged: it holds no spreadsheet");
    }
    return new Workbook(sheets, names);
  }

  private void addLength(String style, String attribute) {
    attribute(STYLE, attribute)
        .map(OdsLengths::millimetres)
        .ifPresent(mm -> lengths.put(style, mm));
  }

  /** Passes over an element that holds neither cells nor notes. */
  private boolean skipped() throws XMLStreamException {
    if (!ASIDE.contains(xml.getLocalName())) {
      return false;
    }
    XmlPart.skip(xml);
    return true;
  }

  private boolean isDrawn() {
    return DRAW.equals(xml.getNamespaceURI());
  }

  /** The text of a shape that begins here. */
  private String noted() throws XMLStreamException, UnreadableFileException {
    tally.note();
    return OdsText.paragraphs(xml, this::skipped);
  }

  private void addDefinedName(Optional<String> sheet) throws UnreadableFileException {
    Optional<DefinedName> name = definedName(sheet);
    if (name.isPresent()) {
      tally.name();
      names.add(name.get());
    }
  }

  private Optional<DefinedName> definedName(Optional<String> sheet) {
    if (at(TABLE, "named-range")) {
      return attribute(TABLE, "cell-range-address")
          .map(range -> definedName(sheet, "[" + range + "]"));
    }
    return at(TABLE, "named-expression")
        ? attribute(TABLE, "expression").map(expression -> definedName(sheet, expression))
        : Optional.empty();
  }

  private DefinedName definedName(Optional<String> sheet, String expression) {
    CellAddress base =
        attribute(TABLE, "base-cell-address")
            .flatMap(OpenFormula::cell)
            .orElseGet(() -> new CellAddress(sheet.orElse(""), 0, 0));
    String formula = FormulaText.uniform(OpenFormula.named(expression, base.sheet()));
    return new DefinedName(
        attribute(TABLE, "name").orElse(""),
        sheet,
        new NamedFormula(formula, base, SheetSize.LARGE));
  }

  private boolean at(String namespace, String element) {
    return xml.getLocalName().equals(element) && namespace.equals(xml.getNamespaceURI());
  }

  private Optional<String> attribute(String namespace, String attribute) {
    return Optional.ofNullable(xml.getAttributeValue(namespace, attribute));
  }

  private int count(String attribute) {
    int count = attribute(TABLE, attribute).map(Integer::parseInt).orElse(1);
    if (count < 1) {
      throw new IllegalArgumentException(attribute + " is " + count);
    }
    return count;
  }

  /** One sheet while it is read. */
  private final class Table {

    private final String name = attribute(TABLE, "name").orElse("");
    private final Sheet.Builder sheet = new Sheet.Builder(name);
    private final List<CellRange> arrays = new ArrayList<>();
    private final List<Floating> floating = new ArrayList<>();
    private final OdsLengths widths = new OdsLengths();
    private final OdsLengths heights = new OdsLengths();
    private int row;

    Sheet read() throws XMLStreamException, UnreadableFileException {
      if (hiddenStyles.contains(attribute(TABLE, "style-name").orElse(""))) {
        sheet.hide();
      }
      while (!ended("table")) {
        if (xml.getEventType() == XMLStreamConstants.START_ELEMENT && !skipped()) {
          if (at(TABLE, "table-row")) {
            readRow();
          } else if (at(TABLE, "table-column")) {
            widths.add(count("number-columns-repeated"), length(COLUMN));
          } else if (isDrawn() && !at(DRAW, "g")) {
            readFloating();
          } else {
            addDefinedName(Optional.of(name));
          }
        }
      }
      for (CellRange array : arrays) {
        sheet.spread(array, tally);
      }
      for (Floating box : floating) {
        sheet.box(widths.at(box.x()), heights.at(box.y()), box.text());
      }
      return sheet.build();
    }

    private double length(double usual) {
      return attribute(TABLE, "style-name").map(lengths::get).orElse(usual);
    }

    /** A drawing that lies on the page; where is known once all rows are. */
    private void readFloating() throws XMLStreamException, UnreadableFileException {
      double x = attribute(SVG, "x").map(OdsLengths::millimetres).orElse(0.0);
      double y = attribute(SVG, "y").map(OdsLengths::millimetres).orElse(0.0);
      floating.add(new Floating(x, y, noted()));
    }

    private void readComment(int column) throws XMLStreamException, UnreadableFileException {
      tally.note();
      StringBuilder author = new StringBuilder();
      String text =
          OdsText.paragraphs(
              xml,
              () -> {
                if (at(CREATOR, "creator")) {
                  author.append(XlsxText.content(xml));
                } else if (OdsText.isText(xml)) {
                  return false;
                } else {
                  XmlPart.skip(xml);
                }
                return true;
              });
      sheet.comment(column, row, author.toString(), text);
    }

    /** Reads what is noted on a cell, if that is what begins here. */
    private boolean isNote(int column) throws XMLStreamException, UnreadableFileException {
      if (at(OFFICE, "annotation")) {
        readComment(column);
        return true;
      }
      if (isDrawn()) {
        sheet.box(column, row, noted());
        return true;
      }
      return skipped();
    }

    private void readRow() throws XMLStreamException, UnreadableFileException {
      int repeats = count("number-rows-repeated");
      heights.add(repeats, length(ROW));
      List<Placed> placed = new ArrayList<>();
      int column = 0;
      while (!ended("table-row")) {
        if (xml.getEventType() == XMLStreamConstants.START_ELEMENT
            && !skipped()
            && (at(TABLE, "table-cell") || at(TABLE, "covered-table-cell"))) {
          column = readCell(column, placed);
        }
      }
      place(placed, repeats);
      row = Math.addExact(row, repeats);
    }

    private int readCell(int column, List<Placed> placed)
        throws XMLStreamException, UnreadableFileException {
      int repeats = count("number-columns-repeated");
      merge(column);
      Optional<CellRange> array = array(column);
      CellElement cell = new CellElement();
      Optional<Content> content = cell.read(array, () -> isNote(column));
      if (content.isPresent()) {
        if (column + (long) repeats > Limits.COLUMNS) {
          throw limits.tooManyCells();
        }
        tally.require(placed.size() + (long) repeats);
        for (int i = 0; i < repeats; i++) {
          placed.add(new Placed(column + i, content.get(), cell.format));
        }
      }
      return Math.addExact(column, repeats);
    }

    private void place(List<Placed> placed, int repeats) throws UnreadableFileException {
      if (placed.isEmpty()) {
        return;
      }
      if (row + (long) repeats > Limits.ROWS) {
        throw limits.tooManyCells();
      }
      tally.require((long) placed.size() * repeats);
      for (int i = 0; i < repeats; i++) {
        for (Placed cell : placed) {
          tally.cell(cell.content());
          sheet.put(cell.column(), row + i, cell.content());
          sheet.format(cell.column(), row + i, cell.format());
        }
      }
    }

    private void merge(int column) throws UnreadableFileException {
      CellRange area = area(column, "number-columns-spanned", "number-rows-spanned");
      if (size(area) > 1) {
        tally.merged();
        sheet.merge(area);
      }
    }

    private Optional<CellRange> array(int column) throws UnreadableFileException {
      if (attribute(TABLE, "number-matrix-columns-spanned").isEmpty()) {
        return Optional.empty();
      }
      CellRange area = area(column, "number-matrix-columns-spanned", "number-matrix-rows-spanned");
      tally.require(size(area));
      arrays.add(area);
      return Optional.of(area);
    }

    private static long size(CellRange area) {
      return (long) area.height() * area.width();
    }

    private CellRange area(int column, String columns, String rows) {
      return new CellRange(
          name,
          column,
          row,
          Math.addExact(column, count(columns) - 1),
          Math.addExact(row, count(rows) - 1));
    }

    private boolean ended(String element) throws XMLStreamException {
      return xml.next() == XMLStreamConstants.END_ELEMENT && at(TABLE, element);
    }
  }

  private record Placed(int column, Content content, NumberFormat format) {}

  /** A text that lies so many millimetres from the upper left corner of its sheet. */
  private record Floating(double x, double y, String text) {}

  /** One cell while it is read. */
  private final class CellElement {

    private final String type = attribute(OFFICE, "value-type").orElse("");
    private final boolean error =
        attribute(CALC_EXTENSION, "value-type").orElse("").equals("error");
    private final Optional<String> formula = attribute(TABLE, "formula");
    private final Optional<String> string = attribute(OFFICE, "string-value");
    private final Optional<Double> number = number();
    private NumberFormat format = NumberFormat.PLAIN;
    private final boolean logical = attribute(OFFICE, "boolean-value").orElse("").equals("true");

    Optional<Content> read(Optional<CellRange> array, OdsText.Aside notes)
        throws XMLStreamException, UnreadableFileException {
      String shown = OdsText.paragraphs(xml, notes);
      Optional<Content> value = value(shown);
      if (type.equals("float") || type.equals("percentage")) {
        format = NumberFormat.seen(shown, type.equals("percentage"));
      }
      return formula
          .<Content>map(
              written -> {
                String text = FormulaText.uniform(OpenFormula.translate(written));
                return new Content.Formula(written, text, value, array);
              })
          .or(() -> value);
    }

    private Optional<Double> number() {
      return switch (type) {
        case "float", "percentage", "currency" ->
            attribute(OFFICE, "value").map(Double::parseDouble);
        case "date" -> attribute(OFFICE, "date-value").map(this::days);
        case "time" ->
            attribute(OFFICE, "time-value")
                .map(Duration::parse)
                .map(time -> time.toNanos() / (double) Duration.ofDays(1).toNanos());
        default -> Optional.empty();
      };
    }

    private double days(String date) {
      LocalDateTime moment =
          date.contains("T") ? LocalDateTime.parse(date) : LocalDate.parse(date).atStartOfDay();
      long days = ChronoUnit.DAYS.between(firstDay, moment.toLocalDate());
      return days + moment.toLocalTime().toNanoOfDay() / (double) Duration.ofDays(1).toNanos();
    }

    private Optional<Content> value(String shown) {
      if (error || (formula.isPresent() && ERROR_NAME.matcher(shown).matches())) {
        return Optional.of(new Content.Error(shown));
      }
      return switch (type) {
        case "" -> Optional.empty();
        case "string" -> Optional.of(new Content.Text(string.orElse(shown)));
        case "boolean" -> Optional.of(new Content.Logical(logical));
        default -> number.map(Content::number);
      };
    }
  }
}
