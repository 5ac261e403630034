package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.StatedResult;
import tenthmark.measurement.formula.CellAddress;

/** A record without uncertainty. */
@AutoService(Rule.class)
public final class UncertaintyMissing implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "uncertainty-missing",
          Severity.ERROR,
          "A value without an uncertainty, be it measured or a calculated one that no other value "
              + "is calculated from.",
          "Without it nobody can tell how far the value can be trusted.",
          "Fill in the contributions and their total, for instance with LAB_TOTAL.",
          "Crank arm 172.5 mm and an empty uncertainty; =LAB_TOTAL(G4:H4) over the "
              + "contributions of the row fills it.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean stated =
        measurement.cell(Field.UNCERTAINTY).isPresent()
            || measurement.stated().filter(result -> isOwn(result, measurement)).isPresent();
    return stated || isOnTheWay(measurement, inspection)
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                "the record " + measurement.name() + " has no uncertainty",
                "an uncertainty in the unit of the value"));
  }

  /** A calculated value that others are calculated from; those are as uncertain as the measured. */
  private static boolean isOnTheWay(MeasurementRecord measurement, Inspection inspection) {
    CellAddress value = measurement.placeOrValue(Field.VALUE);
    Set<CellAddress> values = inspection.recordValues();
    inspection.derivations().forEach(derivation -> values.add(derivation.claim().value()));
    return measurement.isCalculatedFrom(inspection.recordValues())
        && values.stream()
            .filter(other -> !other.equals(value))
            .anyMatch(other -> inspection.evaluation().dependsOn(other, Set.of(value)));
  }

  /**
   * A formula that states a result of a blank uncertainty calls it exact; that is nobody's word.
   */
  private static boolean isOwn(StatedResult result, MeasurementRecord measurement) {
    boolean exact = result.text().uncertainty().orElseThrow().signum() == 0;
    return !exact || !measurement.isFormula(result.field());
  }
}
