package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** An expected quantity without any record that has a value. */
@AutoService(Rule.class)
public final class QuantityMissing implements Rule {

  /** What may follow a name, as in {@code Time / s} or {@code Zeit in s}. */
  private static final Pattern UNIT =
      Pattern.compile(
          "(?s)(?<!\\s)\\s*(?:/|\\s(?:"
              + String.join("|", Vocabulary.STANDARD.of(Notion.IN))
              + ")\\s).*");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("quantity-missing", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return inspection.workbook().sheets().stream()
        .limit(1)
        .map(sheet -> new CellAddress(sheet.name(), 0, 0))
        .flatMap(
            corner ->
                inspection.course().quantities().stream()
                    .filter(ExpectedQuantity::required)
                    .filter(quantity -> !isFilledIn(quantity, inspection))
                    .map(
                        quantity ->
                            label(quantity, inspection)
                                .map(place -> unread(place, quantity))
                                .orElseGet(() -> missing(corner, quantity))))
        .toList();
  }

  /** Records that cannot be told apart are there as well. */
  private static boolean isFilledIn(ExpectedQuantity quantity, Inspection inspection) {
    List<ExpectedRecord> records =
        inspection.expectations().records().stream()
            .filter(expected -> expected.quantity().equals(quantity))
            .toList();
    return records.isEmpty()
        ? !inspection.expectations().missing().contains(quantity)
        : records.stream()
            .anyMatch(expected -> expected.measurement().cell(Field.VALUE).isPresent());
  }

  /** The first cell that names the quantity, with or without its unit. */
  private static Optional<CellAddress> label(ExpectedQuantity quantity, Inspection inspection) {
    return inspection
        .sheets()
        .flatMap(Sheet::cells)
        .filter(
            cell ->
                cell.content() instanceof Content.Text text
                    && (quantity.isNamed(text.text())
                        || quantity.isNamed(UNIT.matcher(text.text()).replaceFirst(""))))
        .map(Cell::address)
        .findFirst();
  }

  private static Finding unread(CellAddress place, ExpectedQuantity quantity) {
    return DECLARATION.finding(
        place,
        Message.of("quantity-missing.unread", quantity.name()),
        Message.of("quantity-missing.value", quantity.unit().text()));
  }

  private static Finding missing(CellAddress corner, ExpectedQuantity quantity) {
    return DECLARATION.finding(
        corner,
        Message.of("quantity-missing.found", quantity.name()),
        quantity
            .symbol()
            .map(symbol -> Message.of("quantity-missing.symbol", symbol, quantity.unit().text()))
            .orElseGet(() -> Message.of("quantity-missing.expected", quantity.unit().text())));
  }
}
