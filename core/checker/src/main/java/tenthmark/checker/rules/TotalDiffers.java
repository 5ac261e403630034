package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** A total that its contributions do not make, combined in either way. */
@AutoService(Rule.class)
public final class TotalDiffers implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("total-differs", Severity.ERROR);

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
    return TotalComparison.of(measurement, inspection)
        .filter(comparison -> comparison.fitting().isEmpty())
        .map(
            comparison ->
                DECLARATION
                    .finding(
                        measurement.placeOrValue(Field.UNCERTAINTY),
                        comparison.found(),
                        comparison.expected())
                    .mendedBy(
                        measurement,
                        Field.UNCERTAINTY,
                        comparison.size(inspection.convention().combine())));
  }
}
