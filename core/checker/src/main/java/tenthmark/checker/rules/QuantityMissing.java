package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** An expected quantity without any record. */
@AutoService(Rule.class)
public final class QuantityMissing implements Rule {

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
                inspection.expectations().missing().stream()
                    .filter(ExpectedQuantity::required)
                    .map(quantity -> finding(corner, quantity)))
        .toList();
  }

  private static Finding finding(CellAddress corner, ExpectedQuantity quantity) {
    return DECLARATION.finding(
        corner,
        Message.of("quantity-missing.found", quantity.name()),
        quantity
            .symbol()
            .map(symbol -> Message.of("quantity-missing.symbol", symbol, quantity.unit().text()))
            .orElseGet(() -> Message.of("quantity-missing.expected", quantity.unit().text())));
  }
}
