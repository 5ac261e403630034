package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.math.BigDecimal;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.StatedResult;
import tenthmark.measurement.wording.Message;

/** A stated result that is not the rounded value and uncertainty of its row. */
@AutoService(Rule.class)
public final class ResultDiffers implements RecordRule {

  private static final double ROUNDING = 1e-6;

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("result-differs", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<StatedResult> result =
        measurement.stated().filter(stated -> stated.field() == Field.RESULT);
    Optional<Double> value = measurement.number(Field.VALUE);
    Optional<Double> uncertainty = measurement.number(Field.UNCERTAINTY).filter(size -> size > 0);
    if (result.isEmpty() || value.isEmpty() || uncertainty.isEmpty()) {
      return Optional.empty();
    }
    return fits(result.get(), value.get(), uncertainty.get())
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.RESULT),
                Message.of("result-differs.found", measurement.name(), result.get().shown()),
                Message.of(
                    "result-differs.expected",
                    Numbers.show(value.get()),
                    Numbers.show(uncertainty.get()))));
  }

  /** A value is off by at most half a step of its last digit, an uncertainty may be rounded up. */
  private static boolean fits(StatedResult result, double value, double uncertainty) {
    BigDecimal stated = result.uncertainty();
    BigDecimal written = result.text().value();
    double step = step(stated);
    // A value without decimals may end in zeros that only hold its place.
    double valueStep = written.scale() > 0 ? step(written) : Math.max(step(written), step);
    return near(written, value, valueStep / 2)
        && (result.isRelative() || near(stated, uncertainty, step));
  }

  private static double step(BigDecimal written) {
    return BigDecimal.ONE.scaleByPowerOfTen(-written.scale()).doubleValue();
  }

  private static boolean near(BigDecimal written, double exact, double off) {
    return Math.abs(written.doubleValue() - exact) <= off * (1 + ROUNDING);
  }
}
