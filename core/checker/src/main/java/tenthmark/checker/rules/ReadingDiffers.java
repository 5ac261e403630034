package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.Length;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
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
  public boolean restsOnTables() {
    return true;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Double> reading = measurement.number(Field.READING);
    Optional<ScaleClaim> scale =
        measurement.scale().or(() -> reading.flatMap(size -> listed(measurement, inspection)));
    if (scale.isEmpty() || (reading.isEmpty() && !isMissing(measurement, inspection))) {
      return Optional.empty();
    }
    return reading
            .filter(
                size ->
                    fitting(scale.get(), measurement, inspection)
                        .map(fit -> new HalfWidth(fit.uncertainty()))
                        .anyMatch(bound -> bound.agrees(size, inspection.convention())))
            .isPresent()
        ? Optional.empty()
        : Optional.of(
            finding(measurement, reading, fitting(scale.get(), measurement, inspection).toList()));
  }

  private static Finding finding(
      MeasurementRecord measurement, Optional<Double> reading, List<ScaleReading> fitting) {
    Finding finding =
        DECLARATION.finding(
            measurement.placeOrValue(Field.READING),
            found(measurement, reading),
            expected(fitting.stream()));
    return fitting.stream()
        .findFirst()
        .map(right -> finding.mendedBy(measurement, Field.READING, right.uncertainty()))
        .orElse(finding);
  }

  /** Where the record does not say off which scale it was read, the course's list may. */
  private static Optional<ScaleClaim> listed(MeasurementRecord measurement, Inspection inspection) {
    return inspection
        .apparatus(measurement)
        .filter(apparatus -> apparatus.kind() == ApparatusKind.SCALE)
        .flatMap(
            scale ->
                RecordUnits.to(scale.unit(), measurement, Field.READING)
                    .map(conversion -> conversion.difference(scale.division()))
                    .map(
                        division ->
                            new ScaleClaim(
                                division, scale.spacing(), scale.fraction(), Optional.empty())));
  }

  /** A display has a last digit where a scale has a division, and nothing to judge by eye. */
  private static boolean isMissing(MeasurementRecord measurement, Inspection inspection) {
    return measurement.place(Field.READING).isPresent()
        && measurement.cell(Field.READING).isEmpty()
        && !inspection.isOffDisplay(measurement);
  }

  private static Message found(MeasurementRecord measurement, Optional<Double> reading) {
    return reading
        .map(size -> Message.of("reading-differs.found", measurement.name(), Numbers.show(size)))
        .orElseGet(() -> Message.of("reading-differs.missing", measurement.name()));
  }

  /** Where a length is said to have one end, two are right too; that is another rule's concern. */
  private static Stream<ScaleReading> fitting(
      ScaleClaim scale, MeasurementRecord measurement, Inspection inspection) {
    Stream<Integer> others =
        Stream.of(1, 2)
            .filter(count -> scale.ends().isEmpty() || Length.isBetweenEnds(measurement));
    return Stream.concat(scale.ends().stream(), others)
        .distinct()
        .flatMap(
            count ->
                Stream.concat(
                    scale.readings(inspection.convention(), count).stream(),
                    Stream.concat(judgedHere(measurement, inspection), steps(measurement))
                        .map(part -> new ScaleReading(scale.division(), part, count))));
  }

  /** Of a vernier, a micrometer or a display nothing is judged between its steps. */
  private static Stream<Double> steps(MeasurementRecord measurement) {
    return Vocabulary.STANDARD.mentions(Notion.OWN_ZERO, measurement.wording())
            || Vocabulary.STANDARD.mentions(Notion.LAST_DIGIT, measurement.wording())
        ? Stream.of(0.5, 1.0, 2.0)
        : Stream.of();
  }

  /** What the course says is judged on the record's instrument, if it says a number. */
  private static Stream<Double> judgedHere(MeasurementRecord measurement, Inspection inspection) {
    return inspection.apparatus(measurement).flatMap(Apparatus::fraction).stream();
  }

  private static Message expected(Stream<ScaleReading> fitting) {
    return Message.joined("list.or", fitting.distinct().map(ReadingDiffers::shown).toList());
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
