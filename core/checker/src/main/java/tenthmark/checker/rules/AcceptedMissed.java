package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.wording.Message;

/** A result that does not agree with the accepted value. */
@AutoService(Rule.class)
public final class AcceptedMissed implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("accepted-missed", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    UnitText.Known unit = expected.quantity().unit();
    Optional<AcceptedValue> accepted = expected.quantity().accepted();
    Optional<Double> value = expected.value();
    Optional<Double> uncertainty = expected.uncertainty();
    if (accepted.isEmpty()
        || value.isEmpty()
        || uncertainty.isEmpty()
        || expected.slip().isPresent()) {
      return Optional.empty();
    }
    Combine combine = inspection.convention().combine();
    double allowed =
        accepted.get().gap()
            * combine.total(List.of(uncertainty.get(), accepted.get().uncertainty()));
    double difference = Math.abs(value.get() - accepted.get().value());
    return Numbers.same(value.get(), accepted.get().value())
            || difference <= allowed
            || Numbers.same(difference, allowed)
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.VALUE),
                Message.of(
                    "found.is", measurement.name(), show(value.get(), uncertainty.get(), unit)),
                expected(accepted.get(), unit, combine, uncertainty.get(), allowed, difference)));
  }

  private static Message expected(
      AcceptedValue accepted,
      UnitText.Known unit,
      Combine combine,
      double uncertainty,
      double allowed,
      double difference) {
    Message total =
        Message.of(
            combine == Combine.STRAIGHT ? "accepted-missed.straight" : "accepted-missed.quadrature",
            Numbers.show(uncertainty),
            Numbers.show(accepted.uncertainty()));
    return Message.of(
        "accepted-missed.expected",
        Numbers.show(allowed, unit.text()),
        show(accepted.value(), accepted.uncertainty(), unit),
        accepted.gap() == 1
            ? total
            : Message.of("accepted-missed.times", Numbers.show(accepted.gap()), total),
        Numbers.show(difference, unit.text()));
  }

  private static Message show(double value, double uncertainty, UnitText.Known unit) {
    return Message.of(
        "value.uncertain", Numbers.show(value), Numbers.show(uncertainty, unit.text()));
  }
}
