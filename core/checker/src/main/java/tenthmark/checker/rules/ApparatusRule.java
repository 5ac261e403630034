package tenthmark.checker.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.Course;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.formula.CellAddress;

/**
 * A rule that sets a measured record against the apparatus that the course lists for it: the one
 * that its quantity names, else the one that the record mentions.
 */
interface ApparatusRule extends Rule {

  /** What the rule finds in a record. */
  Optional<Finding> check(
      MeasurementRecord measurement, Apparatus apparatus, Inspection inspection);

  @Override
  default List<Finding> check(Inspection inspection) {
    Course course = inspection.course();
    if (course.apparatus().isEmpty()) {
      return List.of();
    }
    Map<MeasurementRecord, String> listed = new HashMap<>();
    for (ExpectedRecord expected : inspection.expectations().records()) {
      expected.quantity().apparatus().ifPresent(name -> listed.put(expected.measurement(), name));
    }
    Set<CellAddress> values = inspection.recordValues();
    return inspection.records().stream()
        .filter(measurement -> !measurement.isCalculatedFrom(values))
        .flatMap(
            measurement ->
                Optional.ofNullable(listed.get(measurement))
                    .flatMap(course::apparatus)
                    .or(() -> course.apparatusMentioned(measurement.wording()))
                    .flatMap(apparatus -> check(measurement, apparatus, inspection))
                    .stream())
        .toList();
  }
}
