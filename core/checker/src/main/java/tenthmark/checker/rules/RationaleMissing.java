package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.Rationale;
import tenthmark.measurement.formula.CellAddress;

/** A measured value without a rationale; a calculated one needs none. */
@AutoService(Rule.class)
public final class RationaleMissing implements Rule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "rationale-missing",
          Severity.WARNING,
          "A measurement without a text that says why its contributions are what they are.",
          "The reader must be able to judge the uncertainty and not only believe it.",
          "Write under the record, or in a column Rationale, where each contribution comes from; "
              + "LAB_RATIONALE makes a first draft.",
          "Wheel diameter 622 ± 2 mm stands alone; under it belongs: reading 0.5 mm (two "
              + "ends, fine marks), physical 1.5 mm (the tyre gives way).");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    Set<CellAddress> values = inspection.recordValues();
    return inspection.records().stream()
        .filter(RationaleMissing::hasNone)
        .filter(measurement -> !measurement.isCalculatedFrom(values))
        .map(RationaleMissing::finding)
        .toList();
  }

  private static boolean hasNone(MeasurementRecord measurement) {
    return measurement.rationale().map(Rationale::text).orElse("").isEmpty();
  }

  private static Finding finding(MeasurementRecord measurement) {
    Optional<CellAddress> place = measurement.rationale().map(Rationale::address);
    return DECLARATION.finding(
        place.orElseGet(() -> measurement.placeOrValue(Field.VALUE)),
        "the record " + measurement.name() + " has no rationale",
        "a sentence under the record or in a rationale column");
  }
}
