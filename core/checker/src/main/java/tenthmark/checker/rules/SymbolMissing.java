package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** A record without symbol in a table that has a column for it. */
@AutoService(Rule.class)
public final class SymbolMissing implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "symbol-missing",
          Severity.NOTE,
          "A record without a symbol in a table that has a column for symbols.",
          "Formulas in the report refer to quantities by their symbols.",
          "Write the symbol that the report uses.",
          "The column Symbol of the wheel's diameter is empty; the report calls it d.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean missing =
        measurement.place(Field.SYMBOL).isPresent() && measurement.cell(Field.SYMBOL).isEmpty();
    return missing
        ? Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.SYMBOL),
                "the record " + measurement.name() + " has no symbol",
                "a symbol, as the column's heading says"))
        : Optional.empty();
  }
}
