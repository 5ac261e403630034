package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Locale;
import java.util.Optional;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.recording.Spacing;
import tenthmark.measurement.wording.Message;

/** A division or a spacing that the instrument does not have. */
@AutoService(Rule.class)
public final class ScaleUnlikeApparatus implements ApparatusRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("scale-unlike-apparatus", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(
      MeasurementRecord measurement, Apparatus apparatus, Inspection inspection) {
    return division(measurement, apparatus).or(() -> spacing(measurement, apparatus));
  }

  private static Optional<Finding> division(MeasurementRecord measurement, Apparatus apparatus) {
    Field field =
        measurement.number(Field.DIVISION).isPresent() ? Field.DIVISION : Field.RESOLUTION;
    Optional<Double> stated =
        measurement
            .number(field)
            .or(() -> measurement.scale().map(ScaleClaim::division))
            .filter(size -> size != 0);
    Optional<Double> listed =
        RecordUnits.to(apparatus.unit(), measurement, field)
            .map(conversion -> conversion.difference(apparatus.division()));
    return stated.isEmpty() || listed.isEmpty() || Numbers.same(stated.get(), listed.get())
        ? Optional.empty()
        : Optional.of(
            DECLARATION
                .finding(
                    measurement.placeOrValue(field),
                    Message.of(
                        "scale-unlike-apparatus.found",
                        field.inWords(),
                        measurement.name(),
                        Numbers.show(stated.get())),
                    Message.of(
                        "scale-unlike-apparatus.expected",
                        Numbers.show(listed.get(), RecordUnits.text(measurement, field)),
                        apparatus.name()))
                .mendedBy(measurement, field, listed.get()));
  }

  private static String word(Spacing spacing) {
    return spacing.name().toLowerCase(Locale.ROOT);
  }

  private static Optional<Finding> spacing(MeasurementRecord measurement, Apparatus apparatus) {
    Optional<Spacing> stated = measurement.scale().flatMap(ScaleClaim::spacing);
    return apparatus
        .spacing()
        .filter(listed -> stated.isPresent() && stated.get() != listed)
        .map(
            listed ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.SPACING),
                    Message.of(
                        "scale-unlike-apparatus.spacing", measurement.name(), word(stated.get())),
                    Message.of("scale-unlike-apparatus.marks", word(listed), apparatus.name())));
  }
}
