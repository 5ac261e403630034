package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.recording.Combine;

/** A result that does not agree with the accepted value. */
@AutoService(Rule.class)
public final class AcceptedMissed implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "accepted-missed",
          Severity.WARNING,
          "A result whose difference from the accepted value is larger than the uncertainties "
              + "allow.",
          "Either a reading, a formula or a unit is wrong, or an uncertainty is too small.",
          "Look for a systematic error and for a contribution that was left out; do not adjust the "
              + "value.",
          "Crank arm 173.6 ± 0.5 mm beside the accepted 172.5 ± 0.5 mm; they may differ "
              + "by 1 mm, not 1.1 mm.");

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
    if (accepted.isEmpty() || value.isEmpty() || uncertainty.isEmpty()) {
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
                measurement.name() + " is " + show(value.get(), uncertainty.get(), unit),
                expected(accepted.get(), unit, combine, uncertainty.get(), allowed, difference)));
  }

  private static String expected(
      AcceptedValue accepted,
      UnitText.Known unit,
      Combine combine,
      double uncertainty,
      double allowed,
      double difference) {
    String factor = accepted.gap() == 1 ? "" : Numbers.show(accepted.gap()) + " x ";
    return "within "
        + Numbers.show(allowed, unit.text())
        + " of the accepted "
        + show(accepted.value(), accepted.uncertainty(), unit)
        + " ("
        + factor
        + combine.name().toLowerCase(Locale.ROOT)
        + " total of "
        + Numbers.show(uncertainty)
        + " and "
        + Numbers.show(accepted.uncertainty())
        + "); the difference is "
        + Numbers.show(difference, unit.text());
  }

  private static String show(double value, double uncertainty, UnitText.Known unit) {
    return Numbers.show(value) + " ± " + Numbers.show(uncertainty, unit.text());
  }
}
