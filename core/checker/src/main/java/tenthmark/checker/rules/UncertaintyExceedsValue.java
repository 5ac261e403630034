package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** An uncertainty larger than its value. */
@AutoService(Rule.class)
public final class UncertaintyExceedsValue implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "uncertainty-exceeds-value",
          Severity.NOTE,
          "An uncertainty that is larger than the value, which is not zero.",
          "It may be right, but often a unit or a decimal point went wrong.",
          "Check the units and the decimal points of the value and the contributions.",
          "A foam grip of 5.1 with an uncertainty of 30: the value is in centimetres and "
              + "the uncertainty in millimetres.");

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
                "the uncertainty of "
                    + measurement.name()
                    + " is "
                    + Numbers.show(uncertainty.get()),
                "no more than the value, " + Numbers.show(value.get()) + ", in most measurements"))
        : Optional.empty();
  }
}
