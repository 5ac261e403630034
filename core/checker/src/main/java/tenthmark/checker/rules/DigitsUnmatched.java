package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.StatedResult;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.DigitsRule;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Message;

/** Digits of a value that do not go with its uncertainty. */
@AutoService(Rule.class)
public final class DigitsUnmatched implements RecordRule {

  private static final int MOST_DIGITS = 2;

  /** A quarter of a division has one decimal more than a reading to a tenth of it. */
  private static final BigInteger QUARTER = BigInteger.valueOf(25);

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("digits-unmatched", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<StatedResult> stated = measurement.stated();
    return stated.isPresent() ? stated(measurement, stated.get()) : typed(measurement);
  }

  /** A text shows its digits, the zeros at the end too. */
  private static Optional<Finding> stated(MeasurementRecord measurement, StatedResult result) {
    BigDecimal uncertainty = result.text().uncertainty().orElseThrow();
    if (uncertainty.signum() == 0 || result.isRelative()) {
      return Optional.empty();
    }
    if (result.uncertainty().precision() > MOST_DIGITS) {
      return finding(
          measurement,
          result.field(),
          Message.verbatim(result.shown()),
          tooManyDigits(uncertainty));
    }
    int missing = uncertainty.scale() - result.text().value().scale();
    boolean fine = missing == 1 && uncertainty.unscaledValue().mod(QUARTER).signum() == 0;
    return missing == 0 || fine
        ? Optional.empty()
        : finding(
            measurement,
            result.field(),
            Message.verbatim(result.shown()),
            Message.of("digits-unmatched.ends"));
  }

  /** In bare cells zeros at the end do not show, so only too many digits can be seen. */
  private static Optional<Finding> typed(MeasurementRecord measurement) {
    Optional<Double> value = measurement.number(Field.VALUE);
    Optional<Double> size = measurement.number(Field.UNCERTAINTY).filter(number -> number > 0);
    if (value.isEmpty() || size.isEmpty() || isRelative(measurement)) {
      return Optional.empty();
    }
    BigDecimal uncertainty = Decimals.shortest(size.get());
    if (!measurement.isFormula(Field.UNCERTAINTY)
        && measurement.contributions().isEmpty()
        && measurement.scale().isEmpty()
        && uncertainty.precision() > MOST_DIGITS) {
      return finding(
          measurement, Field.UNCERTAINTY, Numbers.show(size.get()), tooManyDigits(uncertainty));
    }
    BigDecimal typed = Decimals.shortest(value.get());
    int decimals = new DigitsRule.Fixed(MOST_DIGITS).round(uncertainty).scale();
    return measurement.isFormula(Field.VALUE) || typed.scale() <= Math.max(decimals, 0)
        ? Optional.empty()
        : finding(
            measurement,
            Field.VALUE,
            Message.figure(PowerOfTen.show(typed)),
            Message.of(
                "digits-unmatched.decimals", Math.max(decimals, 0), Numbers.show(size.get())));
  }

  /** A part of the value says nothing about its digits at sight. */
  private static boolean isRelative(MeasurementRecord measurement) {
    String unit = measurement.unit(Field.UNCERTAINTY);
    return (unit.equals("%") || unit.equals("1")) && !unit.equals(measurement.unit());
  }

  private static Message tooManyDigits(BigDecimal uncertainty) {
    return Message.of(
        "digits-unmatched.digits",
        Message.figure(PowerOfTen.show(new DigitsRule.Bench().round(uncertainty))),
        Message.figure(PowerOfTen.show(new DigitsRule.Fixed(MOST_DIGITS).round(uncertainty))));
  }

  private static Optional<Finding> finding(
      MeasurementRecord measurement, Field field, Message shown, Message expected) {
    return Optional.of(
        DECLARATION.finding(
            measurement.placeOrValue(field),
            Message.of("digits-unmatched.found", field.inWords(), measurement.name(), shown),
            expected));
  }
}
