package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.Length;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.ScaleReading;
import tenthmark.measurement.wording.Message;

/** A length whose reading uncertainty counts one end only. */
@AutoService(Rule.class)
public final class LengthOneEnd implements RecordRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("length-one-end", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<ScaleClaim> scale = measurement.scale();
    Optional<Field> claim =
        List.of(Field.READING, Field.UNCERTAINTY).stream()
            .filter(field -> measurement.number(field).isPresent())
            .findFirst();
    if (scale.isEmpty() || claim.isEmpty()) {
      return Optional.empty();
    }
    double size = measurement.number(claim.get()).orElseThrow();
    return oneEnd(size, scale.get(), inspection.convention())
        .filter(one -> Length.isBetweenEnds(measurement))
        .map(
            one ->
                DECLARATION
                    .finding(
                        measurement.placeOrValue(claim.get()),
                        Message.of("length-one-end.found", measurement.name(), Numbers.show(size)),
                        expected(size, one, inspection.convention()))
                    .mendedBy(measurement, claim.get(), 2 * size));
  }

  /** The reading of one end that a size states; a rounded size may state two ends rather. */
  private static Optional<ScaleReading> oneEnd(
      double size, ScaleClaim scale, Convention convention) {
    for (BiPredicate<Double, Double> fits :
        List.<BiPredicate<Double, Double>>of(Numbers::same, Numbers::agreesAsWritten)) {
      Predicate<ScaleReading> isStated =
          reading ->
              new HalfWidth(reading.uncertainty())
                  .contributions(convention)
                  .anyMatch(exact -> fits.test(size, exact));
      if (scale.readings(convention, 2).stream().anyMatch(isStated)) {
        return Optional.empty();
      }
      Optional<ScaleReading> one =
          scale.readings(convention, 1).stream().filter(isStated).findFirst();
      if (one.isPresent()) {
        return one;
      }
    }
    return Optional.empty();
  }

  private static Message expected(double size, ScaleReading one, Convention convention) {
    if (Numbers.agreesAsWritten(size, one.uncertainty())) {
      return Message.of("length-one-end.expected", Numbers.show(2 * size), Numbers.show(size));
    }
    double two = 2 * one.uncertainty();
    List<Message> standard =
        new HalfWidth(two).contributions(convention).skip(1).map(Numbers::show).toList();
    return Message.of(
        "length-one-end.standard",
        Message.joined("list.or", standard),
        Numbers.show(two),
        Numbers.show(one.uncertainty()));
  }
}
