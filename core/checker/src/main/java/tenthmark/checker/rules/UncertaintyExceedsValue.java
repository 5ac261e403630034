package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** An uncertainty larger than its value. */
@AutoService(Rule.class)
public final class UncertaintyExceedsValue implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("uncertainty-exceeds-value", Severity.NOTE);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Double> value = measurement.number(Field.VALUE).filter(number -> number != 0);
    Optional<Double> uncertainty = measurement.uncertainty();
    boolean exceeds =
        value.isPresent()
            && uncertainty.isPresent()
            && Math.abs(uncertainty.get()) > Math.abs(value.get());
    return exceeds
        ? Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                Message.of(
                    "found.uncertainty", measurement.name(), Numbers.show(uncertainty.get())),
                Message.of("uncertainty-exceeds-value.expected", Numbers.show(value.get()))))
        : Optional.empty();
  }
}
