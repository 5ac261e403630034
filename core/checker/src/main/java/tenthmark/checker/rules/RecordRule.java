package tenthmark.checker.rules;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.record.MeasurementRecord;

/** A rule that looks at each record by itself. */
interface RecordRule extends Rule {

  /** What the rule finds in a record. */
  Optional<Finding> check(MeasurementRecord measurement, Inspection inspection);

  @Override
  default List<Finding> check(Inspection inspection) {
    return inspection.records().stream()
        .flatMap(measurement -> check(measurement, inspection).stream())
        .toList();
  }
}
