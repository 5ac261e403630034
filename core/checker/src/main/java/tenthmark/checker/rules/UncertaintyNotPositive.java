package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** An uncertainty or a contribution that is negative, or an uncertainty of zero. */
@AutoService(Rule.class)
public final class UncertaintyNotPositive implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("uncertainty-not-positive", Severity.ERROR);

  /** What has no unit was mostly counted. */
  private static final Set<String> PURE = Set.of("", "1");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    return Field.CONTRIBUTIONS.stream()
        .filter(part -> isNegative(measurement, part))
        .findFirst()
        .or(() -> Optional.of(Field.UNCERTAINTY).filter(part -> isNegative(measurement, part)))
        .map(part -> negative(measurement, part))
        .or(() -> zero(measurement, inspection));
  }

  private static boolean isNegative(MeasurementRecord measurement, Field part) {
    return measurement.number(part).filter(size -> size < 0).isPresent();
  }

  private static Finding negative(MeasurementRecord measurement, Field part) {
    return DECLARATION.finding(
        measurement.placeOrValue(part),
        Message.of(
            "uncertainty-not-positive.found",
            part.inWords(),
            measurement.name(),
            Numbers.show(measurement.number(part).orElseThrow())),
        Message.of("uncertainty-not-positive.expected"));
  }

  /** What was counted or is defined may well be exact, so it is only told. */
  private static Optional<Finding> zero(MeasurementRecord measurement, Inspection inspection) {
    boolean typed =
        measurement.cell(Field.UNCERTAINTY).isPresent()
            && !measurement.isFormula(Field.UNCERTAINTY)
            && measurement.number(Field.UNCERTAINTY).filter(size -> size == 0).isPresent()
            && !PURE.contains(measurement.unit())
            && !measurement.isCalculatedFrom(inspection.recordValues());
    return typed
        ? Optional.of(
            DECLARATION
                .withSeverity(Severity.NOTE)
                .finding(
                    measurement.placeOrValue(Field.UNCERTAINTY),
                    Message.of(
                        "uncertainty-not-positive.found",
                        Field.UNCERTAINTY.inWords(),
                        measurement.name(),
                        Numbers.show(0)),
                    Message.of("uncertainty-not-positive.exact")))
        : Optional.empty();
  }
}
