package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.recording.ScaleReading;

/** A reading uncertainty that does not follow from division, spacing and ends. */
@AutoService(Rule.class)
public final class ReadingDiffers implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "reading-differs",
          Severity.ERROR,
          "A reading uncertainty that is not division times fraction times ends.",
          "What an eye can judge follows from the scale, not from a wish.",
          "Let =LAB_READING(division; spacing; ends) compute it, or correct the division.",
          "Division 1 mm, fine marks, two ends, and a reading of 0.1 mm; 1 mm x 0.25 x 2 "
              + "= 0.5 mm is right.");

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
                "the reading uncertainty of "
                    + measurement.name()
                    + " is "
                    + reading.map(Numbers::show).orElse("missing"),
                expected(fitting)));
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

  private static String expected(List<ScaleReading> fitting) {
    return fitting.stream()
        .map(
            fit ->
                Numbers.show(fit.uncertainty())
                    + " (division "
                    + Numbers.show(fit.division())
                    + " x fraction "
                    + Numbers.show(fit.fraction())
                    + " x ends "
                    + fit.ends()
                    + ")")
        .collect(Collectors.joining(" or "));
  }
}
