package tenthmark.checker.rules;

import java.util.List;
import java.util.Optional;

/** A rule that looks at each record of a quantity that the course expects. */
interface ExpectedRecordRule extends Rule {

  /** What the rule finds in a record. */
  Optional<Finding> check(ExpectedRecord expected, Inspection inspection);

  @Override
  default List<Finding> check(Inspection inspection) {
    return inspection.expectations().records().stream()
        .flatMap(expected -> check(expected, inspection).stream())
        .toList();
  }
}
