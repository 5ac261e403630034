package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.StatedResult;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A record without uncertainty. */
@AutoService(Rule.class)
public final class UncertaintyMissing implements AbsenceRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("uncertainty-missing", Severity.ERROR);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Field part() {
    return Field.UNCERTAINTY;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean stated =
        measurement.cell(Field.UNCERTAINTY).isPresent()
            || measurement.hasCommonUncertainty()
            || measurement.stated().filter(result -> isOwn(result, measurement)).isPresent();
    return stated || isOnTheWay(measurement, inspection)
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                Message.of("uncertainty-missing.found", measurement.name()),
                Message.of("uncertainty-missing.expected")));
  }

  /** A calculated value that others are calculated from; those are as uncertain as the measured. */
  private static boolean isOnTheWay(MeasurementRecord measurement, Inspection inspection) {
    CellAddress value = measurement.placeOrValue(Field.VALUE);
    return measurement.isCalculatedFrom(inspection.recordValues())
        && Stream.concat(
                inspection.recordValues().stream(),
                inspection.derivations().stream().map(derivation -> derivation.claim().value()))
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
