package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** A reading uncertainty on a digital display. */
@AutoService(Rule.class)
public final class DisplayReading implements RecordRule {

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
        .filter(size -> inspection.isOffDisplay(measurement))
        .map(
            size ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.READING),
                    Message.of("display-reading.found", Numbers.show(size), measurement.name()),
                    Message.of("display-reading.expected")));
  }
}
