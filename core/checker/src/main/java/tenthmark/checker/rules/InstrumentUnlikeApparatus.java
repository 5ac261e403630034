package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.measurement.wording.Message;

/** An instrument uncertainty that is not the maker's. */
@AutoService(Rule.class)
public final class InstrumentUnlikeApparatus implements ApparatusRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("instrument-unlike-apparatus", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(
      MeasurementRecord measurement, Apparatus apparatus, Inspection inspection) {
    Optional<Double> specified = specified(measurement, apparatus);
    Optional<Double> instrument = measurement.number(Field.INSTRUMENT);
    boolean unknown =
        (measurement.cell(Field.INSTRUMENT).isPresent() && instrument.isEmpty())
            || measurement.contributions().isEmpty();
    return specified
        .filter(
            size ->
                !unknown
                    && !new HalfWidth(size).agrees(instrument.orElse(0.0), inspection.convention()))
        .map(
            size ->
                DECLARATION
                    .finding(
                        measurement.placeOrValue(Field.INSTRUMENT),
                        found(measurement, instrument),
                        Message.of(
                            "instrument-unlike-apparatus.expected",
                            Numbers.show(size, RecordUnits.text(measurement, Field.INSTRUMENT)),
                            apparatus.name()))
                    .mendedBy(measurement, Field.INSTRUMENT, size));
  }

  private static Message found(MeasurementRecord measurement, Optional<Double> instrument) {
    return instrument
        .map(
            size ->
                Message.of(
                    "instrument-unlike-apparatus.found", measurement.name(), Numbers.show(size)))
        .orElseGet(() -> Message.of("instrument-unlike-apparatus.missing", measurement.name()));
  }

  /** In the unit in which the record gives it. */
  private static Optional<Double> specified(MeasurementRecord measurement, Apparatus apparatus) {
    return apparatus
        .specification()
        .flatMap(
            specification ->
                measurement
                    .number(Field.VALUE)
                    .flatMap(
                        value ->
                            RecordUnits.from(measurement, Field.VALUE, apparatus.unit())
                                .map(conversion -> conversion.value(value)))
                    .map(specification::uncertainty))
        .flatMap(
            size ->
                RecordUnits.to(apparatus.unit(), measurement, Field.INSTRUMENT)
                    .map(conversion -> conversion.difference(size)))
        .filter(Double::isFinite);
  }
}
