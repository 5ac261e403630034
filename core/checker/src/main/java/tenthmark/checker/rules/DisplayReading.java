package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** A reading uncertainty on a digital display. */
@AutoService(Rule.class)
public final class DisplayReading implements RecordRule {

  private static final Pattern DIGITAL =
      Pattern.compile(
          "\\b(?:digital(?:e[mnrs]?|es)?|digitalanzeige|numériques?)\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("display-reading", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Double> reading = measurement.number(Field.READING).filter(size -> size > 0);
    return reading
        .filter(size -> isOffDisplay(measurement, inspection))
        .map(
            size ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.READING),
                    Message.of("display-reading.found", Numbers.show(size), measurement.name()),
                    Message.of("display-reading.expected")));
  }

  /** Whether the record, or the course's list of apparatus, has a digital display. */
  static boolean isOffDisplay(MeasurementRecord measurement, Inspection inspection) {
    return isDisplay(measurement) || isDisplayByCourse(measurement, inspection);
  }

  private static boolean isDisplay(MeasurementRecord measurement) {
    boolean said =
        Stream.of(Field.QUANTITY, Field.INSTRUMENT, Field.APPARATUS)
            .flatMap(field -> measurement.text(field).stream())
            .anyMatch(text -> DIGITAL.matcher(text).find());
    return said
        || measurement.number(Field.RESOLUTION).isPresent()
        || !measurement.calls("LAB_DISPLAY").isEmpty();
  }

  /** A stopwatch shows digits as well. */
  private static boolean isDisplayByCourse(MeasurementRecord measurement, Inspection inspection) {
    return inspection
        .apparatus(measurement)
        .filter(apparatus -> apparatus.kind() != ApparatusKind.SCALE)
        .isPresent();
  }
}
