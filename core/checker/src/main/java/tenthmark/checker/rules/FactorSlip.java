package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/**
 * A number that differs from the accepted value, or from the other readings, by just a power of ten
 * or another factor that a unit has: a slip of the decimal point or of a unit.
 */
@AutoService(Rule.class)
public final class FactorSlip implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("factor-slip", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return Stream.concat(
            inspection.expectations().records().stream()
                .flatMap(expected -> ofAccepted(expected).stream()),
            Series.in(inspection).flatMap(FactorSlip::ofReadings))
        .toList();
  }

  private static Optional<Finding> ofAccepted(ExpectedRecord expected) {
    MeasurementRecord measurement = expected.measurement();
    String unit = expected.quantity().unit().text();
    return expected
        .slip()
        .map(
            factor ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.VALUE),
                    Message.of(
                        "factor-slip.found",
                        measurement.name(),
                        Numbers.show(expected.value().orElseThrow(), unit),
                        factor.shown()),
                    Message.of(
                        "factor-slip.expected",
                        Numbers.show(expected.quantity().accepted().orElseThrow().value(), unit))));
  }

  private static Stream<Finding> ofReadings(Series series) {
    return series.slips().entrySet().stream()
        .map(
            slip -> {
              double reading = series.readings().get(slip.getKey());
              return DECLARATION.finding(
                  slip.getKey(),
                  Message.of("factor-slip.reading", Numbers.show(reading), slip.getValue().shown()),
                  Message.of(
                      "factor-slip.reading.expected",
                      Numbers.show(reading / slip.getValue().size())));
            });
  }
}
