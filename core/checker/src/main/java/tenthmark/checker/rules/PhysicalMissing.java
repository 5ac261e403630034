package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** No physical contribution where the course expects one. */
@AutoService(Rule.class)
public final class PhysicalMissing implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "physical-missing",
          Severity.WARNING,
          "A record without a physical contribution, of a quantity for which the course expects "
              + "one.",
          "The object itself has no sharp size: soft edges and parts out of round count too.",
          "Estimate how far the ends are uncertain and fill it in, as with =LAB_FUZZY(extent).",
          "Foam grip 128 mm with a reading uncertainty alone; ends soft over 3 mm and 2 "
              + "mm add 2.5 mm.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  /** A record that shows no contributions at all cannot be told. */
  @Override
  public Optional<Finding> check(ExpectedRecord expected, Inspection inspection) {
    MeasurementRecord measurement = expected.measurement();
    boolean shown =
        measurement.place(Field.PHYSICAL).isPresent() || !measurement.contributions().isEmpty();
    boolean unknown =
        measurement.cell(Field.PHYSICAL).isPresent()
            && measurement.number(Field.PHYSICAL).isEmpty();
    boolean there =
        measurement.number(Field.PHYSICAL).filter(size -> size != 0).isPresent()
            || !measurement.calls("LAB_FUZZY").isEmpty();
    return !expected.quantity().physical() || !shown || unknown || there
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.PHYSICAL),
                "the record " + measurement.name() + " has no physical contribution",
                "one: the course expects it of this quantity"));
  }
}
