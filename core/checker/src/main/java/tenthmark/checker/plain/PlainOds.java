package tenthmark.checker.plain;

import static tenthmark.checker.opendocument.ContentElements.COLUMNS_REPEATED;
import static tenthmark.checker.opendocument.ContentElements.OFFICE;
import static tenthmark.checker.opendocument.ContentElements.ROWS_REPEATED;
import static tenthmark.checker.opendocument.ContentElements.TABLE;
import static tenthmark.checker.opendocument.ContentElements.TEXT;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tenthmark.checker.opendocument.ContentCopy;
import tenthmark.checker.opendocument.ContentElements;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/** Changes cells in a copy of an .ods file (OASIS OpenDocument 1.3, part 3). */
final class PlainOds {

  private static final String CALC_EXTENSION =
      "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0";

  private static final List<String> VALUE_ATTRIBUTES =
      List.of(
          "value-type",
          "value",
          "date-value",
          "time-value",
          "boolean-value",
          "string-value",
          "currency");

  private final Map<CellAddress, CellChange> changes;

  private PlainOds(List<CellChange> changes) {
    this.changes =
        changes.stream().collect(Collectors.toMap(CellChange::cell, Function.identity()));
  }

  static byte[] of(Path source, List<CellChange> changes) throws IOException {
    return ContentCopy.of(source, new PlainOds(changes)::apply);
  }

  private void apply(Document content) {
    for (Element table : ContentElements.tables(content)) {
      String sheet = table.getAttributeNS(TABLE, "name");
      int number = 0;
      for (Element row : ContentElements.rows(table)) {
        apply(row, sheet, number);
        number += ContentElements.repeated(row, ROWS_REPEATED);
      }
    }
  }

  private void apply(Element row, String sheet, int number) {
    int column = 0;
    for (Element cell : ContentElements.cells(row)) {
      CellChange change = changes.get(new CellAddress(sheet, column, number));
      if (change != null) {
        apply(change, cell);
      }
      column += ContentElements.repeated(cell, COLUMNS_REPEATED);
    }
  }

  private static void apply(CellChange change, Element cell) {
    if (!change.keepsFormula()) {
      cell.removeAttributeNS(TABLE, "formula");
      cell.removeAttributeNS(TABLE, "number-matrix-columns-spanned");
      cell.removeAttributeNS(TABLE, "number-matrix-rows-spanned");
    }
    String shownAs = cell.getAttributeNS(OFFICE, "value-type");
    VALUE_ATTRIBUTES.forEach(attribute -> cell.removeAttributeNS(OFFICE, attribute));
    cell.removeAttributeNS(CALC_EXTENSION, "value-type");
    ContentElements.children(cell, TEXT).stream()
        .filter(child -> child.getLocalName().equals("p"))
        .forEach(cell::removeChild);
    if (change.value() instanceof Value.Numeric number) {
      String plain = new BigDecimal(Double.toString(number.number())).toString();
      cell.setAttributeNS(
          OFFICE, "office:value-type", shownAs.equals("percentage") ? shownAs : "float");
      cell.setAttributeNS(OFFICE, "office:value", plain);
      ContentElements.paragraph(cell, plain);
    } else {
      cell.setAttributeNS(OFFICE, "office:value-type", "string");
      cell.setAttributeNS(OFFICE, "office:string-value", text(change.value()));
      text(change.value()).lines().forEach(line -> ContentElements.paragraph(cell, line));
    }
  }

  private static String text(Value value) {
    if (value instanceof Value.Fault fault) {
      return fault.reason();
    }
    return value instanceof Value.Text text ? text.text() : "";
  }
}
