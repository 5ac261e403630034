package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.Course;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.ScaleReading;
import tenthmark.measurement.recording.Spacing;
import tenthmark.measurement.wording.Message;

/** A part of a division judged on a scale that is not the course's. */
@AutoService(Rule.class)
public final class FractionOtherwise implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("fraction-otherwise", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    if (inspection.course().equals(Course.PLAIN)) {
      return Optional.empty();
    }
    Optional<Apparatus> scale =
        inspection
            .apparatus(measurement)
            .filter(apparatus -> apparatus.kind() == ApparatusKind.SCALE);
    List<Double> right = fractions(scale, inspection.convention());
    return measurement
        .scale()
        .flatMap(claim -> judged(claim, measurement, scale, inspection.convention()))
        .filter(fraction -> right.stream().noneMatch(one -> Numbers.same(one, fraction)))
        .map(
            fraction ->
                DECLARATION.finding(
                    measurement.placeOrValue(place(measurement)),
                    Message.of(
                        "fraction-otherwise.found", measurement.name(), Numbers.show(fraction)),
                    Message.joined("list.or", right.stream().map(Numbers::show).toList())));
  }

  /** What may be judged: on this instrument, else by the course's convention. */
  private static List<Double> fractions(Optional<Apparatus> scale, Convention convention) {
    Optional<Double> listed =
        scale.flatMap(
            apparatus ->
                apparatus.fraction().or(() -> apparatus.spacing().map(convention::fraction)));
    return listed
        .map(List::of)
        .orElseGet(
            () -> Arrays.stream(Spacing.values()).map(convention::fraction).distinct().toList());
  }

  /**
   * The part of a division from which the reading follows: stated as a number, or by a word where
   * the course gives a number. Which word is right for an instrument is another rule's concern.
   */
  private static Optional<Double> judged(
      ScaleClaim claim,
      MeasurementRecord measurement,
      Optional<Apparatus> scale,
      Convention convention) {
    Optional<Double> stated =
        claim
            .fraction()
            .or(
                () ->
                    claim
                        .spacing()
                        .filter(word -> scale.flatMap(Apparatus::fraction).isPresent())
                        .map(convention::fraction));
    return stated.filter(fraction -> isUsed(claim.division(), fraction, measurement));
  }

  /** A number under such a heading may be something else, such as the distance between marks. */
  private static boolean isUsed(double division, double fraction, MeasurementRecord measurement) {
    return measurement
        .number(Field.READING)
        .or(() -> measurement.number(Field.UNCERTAINTY))
        .filter(
            reading ->
                List.of(1, 2).stream()
                    .map(ends -> new ScaleReading(division, fraction, ends).uncertainty())
                    .anyMatch(right -> Numbers.agreesAsWritten(reading, right)))
        .isPresent();
  }

  private static Field place(MeasurementRecord measurement) {
    return measurement.cell(Field.SPACING).isPresent() ? Field.SPACING : Field.READING;
  }
}
