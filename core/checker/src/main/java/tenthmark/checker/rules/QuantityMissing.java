package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.measurement.formula.CellAddress;

/** An expected quantity without any record. */
@AutoService(Rule.class)
public final class QuantityMissing implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "quantity-missing",
          Severity.ERROR,
          "A quantity that the course requires and no record has.",
          "The work is not complete, or the record goes by a name that the course does not list.",
          "Add the record; if it is there, give it the name or the symbol that the course uses.",
          "A workbook without a record named foam grip length or with its symbol, which "
              + "the course requires.");

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
        "no record is named \"" + quantity.name() + "\"",
        "a record of it"
            + quantity.symbol().map(symbol -> ", symbol " + symbol).orElse("")
            + ", in "
            + quantity.unit().text());
  }
}
