package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Locale;
import java.util.Optional;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.recording.Spacing;

/** A division or a spacing that the instrument does not have. */
@AutoService(Rule.class)
public final class ScaleUnlikeApparatus implements ApparatusRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "scale-unlike-apparatus",
          Severity.WARNING,
          "A division, a display's last digit or a spacing of marks that is not the one in the "
              + "course's list of apparatus.",
          "The reading uncertainty follows from it.",
          "Look at the instrument again, and at the unit of the division.",
          "A length in cm with a division of 1 off a rule marked in millimetres; 0.1 is "
              + "right.");

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
            DECLARATION.finding(
                measurement.placeOrValue(field),
                "the "
                    + field.word()
                    + " of "
                    + measurement.name()
                    + " is "
                    + Numbers.show(stated.get()),
                Numbers.show(listed.get(), RecordUnits.text(measurement, field))
                    + ", as the "
                    + apparatus.name()
                    + " has"));
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
                    "the spacing of " + measurement.name() + " is " + word(stated.get()),
                    word(listed) + ", as the marks of the " + apparatus.name() + " are"));
  }
}
