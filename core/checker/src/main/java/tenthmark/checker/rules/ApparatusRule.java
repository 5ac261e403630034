package tenthmark.checker.rules;

import java.util.Optional;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.record.MeasurementRecord;

/** A rule that sets a measured record against the apparatus that the course lists for it. */
interface ApparatusRule extends RecordRule {

  /** What the rule finds in a record. */
  Optional<Finding> check(
      MeasurementRecord measurement, Apparatus apparatus, Inspection inspection);

  @Override
  default Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    return inspection
        .apparatus(measurement)
        .flatMap(apparatus -> check(measurement, apparatus, inspection));
  }
}
