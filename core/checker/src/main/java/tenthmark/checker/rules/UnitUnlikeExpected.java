package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitText;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.wording.Message;

/** A unit of another dimension than the quantity's. */
@AutoService(Rule.class)
public final class UnitUnlikeExpected implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("unit-unlike-expected", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    UnitText.Known wanted = expected.quantity().unit();
    Optional<MeasurementUnit> unit = RecordUnits.of(measurement, Field.VALUE);
    return unit.filter(written -> written.to(wanted.unit()).isEmpty())
        .map(
            written ->
                DECLARATION
                    .finding(
                        measurement.placeOrValue(Field.UNIT),
                        Message.of(
                            "unit-unlike-expected.found", measurement.name(), measurement.unit()),
                        Message.of("expected.unit", wanted.text()))
                    .mendedBy(
                        measurement.place(Field.UNIT).stream()
                            .map(place -> new Mend(place, new Content.Text(wanted.text())))
                            .toList()));
  }
}
