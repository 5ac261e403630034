package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** A record without symbol in a table that has a column for it. */
@AutoService(Rule.class)
public final class SymbolMissing implements AbsenceRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("symbol-missing", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Field part() {
    return Field.SYMBOL;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean missing =
        measurement.place(Field.SYMBOL).isPresent() && measurement.cell(Field.SYMBOL).isEmpty();
    return missing
        ? Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.SYMBOL),
                Message.of("symbol-missing.found", measurement.name()),
                Message.of("symbol-missing.expected")))
        : Optional.empty();
  }
}
