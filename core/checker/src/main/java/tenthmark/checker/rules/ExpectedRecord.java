package tenthmark.checker.rules;

import java.util.Optional;
import java.util.function.DoublePredicate;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.record.StatedResult;

/** A record of a quantity that the course expects. */
public record ExpectedRecord(ExpectedQuantity quantity, MeasurementRecord measurement) {

  /** A slip is told from a bad result by how near it comes without its factor. */
  private static final double NEAR = 0.02;

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

  /**
   * The factor of a decimal point or a unit by which the value misses the accepted one, where it
   * comes so near to it without that factor that nothing else can be meant.
   */
  Optional<Factor> slip() {
    Optional<AcceptedValue> accepted = quantity.accepted();
    Optional<Double> value = value().filter(number -> number != 0);
    if (accepted.isEmpty() || value.isEmpty()) {
      return Optional.empty();
    }
    double right = accepted.get().value();
    double allowed =
        Math.max(NEAR * Math.abs(right), accepted.get().gap() * accepted.get().uncertainty());
    DoublePredicate isRight = number -> Math.abs(number - right) <= allowed;
    return isRight.test(value.get()) ? Optional.empty() : Factor.explaining(value.get(), isRight);
  }
}
