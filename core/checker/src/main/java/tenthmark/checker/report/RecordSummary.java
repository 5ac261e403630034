package tenthmark.checker.report;

import java.util.Map;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.formula.CellAddress;

/**
 * A measurement record as the checker understood it.
 *
 * @param place where its value stands
 * @param quantity empty if it names none
 * @param symbol empty if it has none
 * @param value empty if it is missing or could not be computed
 * @param uncertainty empty if it is missing or could not be computed
 * @param unit empty if it has none
 * @param contributions sizes by kind, in the order of the fields
 */
public record RecordSummary(
    CellAddress place,
    String quantity,
    String symbol,
    Optional<Double> value,
    Optional<Double> uncertainty,
    String unit,
    Map<Field, Double> contributions) {

  static RecordSummary of(MeasurementRecord measurement) {
    return new RecordSummary(
        measurement.placeOrValue(Field.VALUE),
        measurement.text(Field.QUANTITY).orElse(""),
        measurement.text(Field.SYMBOL).orElse(""),
        measurement.number(Field.VALUE),
        measurement.uncertainty(),
        measurement.unit(),
        measurement.contributions());
  }
}
