package tenthmark.checker.rules;

import java.util.Optional;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.record.StatedResult;

/** A record of a quantity that the course expects. */
public record ExpectedRecord(ExpectedQuantity quantity, MeasurementRecord measurement) {

  /** The value in the course's unit; empty if it or its unit is missing. */
  public Optional<Double> value() {
    return measurement
        .number(Field.VALUE)
        .flatMap(
            number ->
                RecordUnits.from(measurement, Field.VALUE, quantity.unit())
                    .map(conversion -> conversion.value(number)))
        .filter(Double::isFinite);
  }

  /**
   * The uncertainty in the course's unit; empty if it or its unit is missing, or if it is given in
   * percent of the value: of which value is not certain.
   */
  public Optional<Double> uncertainty() {
    boolean relative =
        (measurement.unit(Field.UNCERTAINTY).contains("%") && !measurement.unit().contains("%"))
            || (measurement.number(Field.UNCERTAINTY).isEmpty()
                && measurement.stated().filter(StatedResult::isRelative).isPresent());
    return measurement
        .uncertainty()
        .filter(size -> !relative)
        .flatMap(
            size ->
                RecordUnits.from(measurement, Field.UNCERTAINTY, quantity.unit())
                    .map(conversion -> conversion.difference(size)))
        .filter(Double::isFinite);
  }
}
