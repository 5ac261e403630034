package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** A reading uncertainty on a digital display. */
@AutoService(Rule.class)
public final class DisplayReading implements RecordRule {

  private static final Pattern DIGITAL = Pattern.compile("\\bdigital\\b", Pattern.CASE_INSENSITIVE);

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "display-reading",
          Severity.WARNING,
          "A reading uncertainty on an instrument with a digital display, as the record or the course's "
              + "list of apparatus has it.",
          "Nobody judges a fraction of a mark on a display: its last digit belongs to the "
              + "instrument.",
          "Leave the reading blank and give the instrument uncertainty, as with =LAB_DISPLAY(...).",
          "A gauge shows 2.41 bar and the reading column says 0.005; the reading stays "
              + "blank and the instrument column holds =LAB_DISPLAY(0.01; 2.41; 1; 2).");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Double> reading = measurement.number(Field.READING).filter(size -> size > 0);
    return reading
        .filter(size -> isDisplay(measurement) || isDisplayByCourse(measurement, inspection))
        .map(
            size ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.READING),
                    "a reading uncertainty of "
                        + Numbers.show(size)
                        + " for "
                        + measurement.name()
                        + ", read off a digital display",
                    "no reading uncertainty"));
  }

  private static boolean isDisplay(MeasurementRecord measurement) {
    boolean said =
        Stream.of(Field.QUANTITY, Field.INSTRUMENT)
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
