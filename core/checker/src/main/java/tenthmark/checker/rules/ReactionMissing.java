package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.RecordUnits;
import tenthmark.checker.unit.Conversion;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;
import tenthmark.measurement.wording.Message;

/** A time taken by hand whose uncertainty leaves the reaction time out. */
@AutoService(Rule.class)
public final class ReactionMissing implements RecordRule {

  private static final MeasurementUnit SECOND = UnitReader.STANDARD.read("s").known().orElseThrow();

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("reaction-missing", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    Optional<Conversion> fromSeconds = RecordUnits.of(measurement, Field.VALUE).flatMap(SECOND::to);
    if (fromSeconds.isEmpty()
        || !isByHand(measurement, inspection)
        || measurement.isCalculatedFrom(inspection.recordValues())) {
      return Optional.empty();
    }
    HandTimingClaim claim = HandTimingClaim.of(measurement, inspection, fromSeconds.get());
    return claim.isEnough() || mayBeInTotal(measurement, claim.expected())
        ? Optional.empty()
        : Optional.of(
            DECLARATION
                .finding(
                    measurement.placeOrValue(Field.TIMING),
                    claim
                        .timing()
                        .filter(timing -> timing > 0)
                        .map(
                            timing ->
                                Message.of(
                                    "reaction-missing.found",
                                    measurement.name(),
                                    Numbers.show(timing)))
                        .orElseGet(
                            () -> Message.of("reaction-missing.missing", measurement.name())),
                    expected(claim, measurement.unit()))
                .mendedBy(measurement, Field.TIMING, claim.expected()));
  }

  /** Where nothing is called timing, what is not smaller than the reaction may hold it. */
  private static boolean mayBeInTotal(MeasurementRecord measurement, double expected) {
    Collection<Double> contributions = measurement.contributions().values();
    Stream<Double> sizes =
        contributions.isEmpty() ? measurement.uncertainty().stream() : contributions.stream();
    return measurement.place(Field.TIMING).isEmpty()
        && sizes.anyMatch(size -> size >= expected || Numbers.agreesAsWritten(size, expected));
  }

  private static Message expected(HandTimingClaim claim, String unit) {
    return Message.counted(
        "reaction-missing.expected",
        claim.cycles(),
        Numbers.show(claim.expected(), unit),
        Numbers.show(claim.reactionSeconds()));
  }

  private static boolean isByHand(MeasurementRecord measurement, Inspection inspection) {
    boolean marked = measurement.cell(Field.HAND_TIMING).isPresent();
    boolean denied = marked && isDenied(measurement);
    return marked && !denied
        || Vocabulary.STANDARD.mentions(Notion.BY_HAND, measurement.wording())
        || !denied && isByStopwatch(measurement, inspection);
  }

  private static boolean isDenied(MeasurementRecord measurement) {
    return measurement.number(Field.HAND_TIMING).filter(flag -> flag == 0).isPresent()
        || measurement
            .text(Field.HAND_TIMING)
            .filter(text -> Vocabulary.STANDARD.says(Notion.NO, text))
            .isPresent();
  }

  private static boolean isByStopwatch(MeasurementRecord measurement, Inspection inspection) {
    return inspection
        .apparatus(measurement)
        .filter(apparatus -> apparatus.kind() == ApparatusKind.STOPWATCH)
        .isPresent();
  }
}
