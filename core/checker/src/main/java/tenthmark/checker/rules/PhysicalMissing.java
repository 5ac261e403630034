package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.wording.Message;

/** No physical contribution where the course expects one. */
@AutoService(Rule.class)
public final class PhysicalMissing implements ExpectedRecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("physical-missing", Severity.WARNING);

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
            || !measurement.calls(FunctionRole.PHYSICAL).isEmpty();
    return !expected.quantity().physical() || !shown || unknown || there
        ? Optional.empty()
        : Optional.of(
            DECLARATION.finding(
                measurement.placeOrValue(Field.PHYSICAL),
                Message.of("physical-missing.found", measurement.name()),
                Message.of("physical-missing.expected")));
  }
}
