package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.recording.ScaleReading;
import tenthmark.measurement.wording.Message;

/** A reading uncertainty that does not follow from division, spacing and ends. */
@AutoService(Rule.class)
public final class ReadingDiffers implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("reading-differs", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<ScaleClaim> scale = measurement.scale();
    Optional<Double> reading = measurement.number(Field.READING);
    boolean missing =
        measurement.place(Field.READING).isPresent() && measurement.cell(Field.READING).isEmpty();
    if (scale.isEmpty() || (reading.isEmpty() && !missing)) {
      return Optional.empty();
    }
    List<ScaleReading> fitting = fitting(scale.get(), measurement, inspection);
    return reading
            .filter(
                size ->
                    fitting.stream()
                        .map(fit -> new HalfWidth(fit.uncertainty()))
                        .anyMatch(bound -> bound.agrees(size, inspection.convention())))
            .isPresent()
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.READING),
                found(measurement, reading),
                expected(fitting)));
  }

  private static Message found(MeasurementRecord measurement, Optional<Double> reading) {
    return reading
        .map(size -> Message.of("reading-differs.found", measurement.name(), Numbers.show(size)))
        .orElseGet(() -> Message.of("reading-differs.missing", measurement.name()));
  }

  /** Where a length is said to have one end, two are right too; that is another rule's concern. */
  private static List<ScaleReading> fitting(
      ScaleClaim scale, MeasurementRecord measurement, Inspection inspection) {
    Stream<Integer> ends =
        scale.ends().isEmpty() || LengthOneEnd.isLength(measurement)
            ? Stream.concat(scale.ends().stream(), Stream.of(1, 2)).distinct()
            : scale.ends().stream();
    return ends.flatMap(count -> scale.readings(inspection.convention(), count).stream()).toList();
  }

  private static Message expected(List<ScaleReading> fitting) {
    return Message.joined("list.or", fitting.stream().map(ReadingDiffers::shown).toList());
  }

  private static Message shown(ScaleReading reading) {
    return Message.of(
        "reading-differs.expected",
        Numbers.show(reading.uncertainty()),
        Numbers.show(reading.division()),
        Numbers.show(reading.fraction()),
        reading.ends());
  }
}
