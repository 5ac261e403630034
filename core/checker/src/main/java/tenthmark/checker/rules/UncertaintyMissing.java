package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.StatedResult;

/** A record without uncertainty. */
@AutoService(Rule.class)
public final class UncertaintyMissing implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "uncertainty-missing",
          Severity.ERROR,
          "A measured value without an uncertainty.",
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
    return stated
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.UNCERTAINTY),
                "the record " + measurement.name() + " has no uncertainty",
                "an uncertainty in the unit of the value"));
  }

  /**
   * A formula that states a result of a blank uncertainty calls it exact; that is nobody's word.
   */
  private static boolean isOwn(StatedResult result, MeasurementRecord measurement) {
    boolean exact = result.text().uncertainty().orElseThrow().signum() == 0;
    return !exact || !measurement.isFormula(result.field());
  }
}
