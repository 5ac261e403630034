package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.Rationale;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * A measured value without a rationale, or with one that says itself that a cause is not given; a
 * calculated one needs none.
 */
@AutoService(Rule.class)
public final class RationaleMissing implements AbsenceRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("rationale-missing", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Field part() {
    return Field.RATIONALE;
  }

  @Override
  public Optional<Finding> check(MeasurementRecord measurement, Inspection inspection) {
    boolean owed =
        measurement.number(Field.VALUE).isPresent()
            && !isExplainedByFormula(measurement)
            && !measurement.isSlope();
    boolean lacking = hasNone(measurement) || lacksCause(measurement) || saysNothing(measurement);
    return owed && lacking && !measurement.isCalculatedFrom(inspection.recordValues())
        ? Optional.of(finding(measurement))
        : Optional.empty();
  }

  /**
   * The scatter of a series says itself where an uncertainty comes from; a result in words does not
   * say whether it was measured.
   */
  private static boolean isExplainedByFormula(MeasurementRecord measurement) {
    boolean inWords =
        measurement.stated().filter(stated -> stated.field() == Field.VALUE).isPresent()
            && measurement.place(Field.RATIONALE).isEmpty();
    return inWords
        || measurement
            .cell(Field.UNCERTAINTY)
            .map(NativeFunctions::of)
            .filter(
                functions ->
                    functions.stream().anyMatch(NativeFunctions.SPREADS::contains)
                        || functions.stream().anyMatch(NativeFunctions.LINES::contains))
            .isPresent();
  }

  private static boolean hasNone(MeasurementRecord measurement) {
    return measurement.rationale().map(Rationale::text).orElse("").isEmpty();
  }

  private static boolean lacksCause(MeasurementRecord measurement) {
    String text = measurement.rationale().map(Rationale::text).orElse("");
    return tenthmark.measurement.recording.Rationale.lacksCause(text);
  }

  /** Words that stand in place of a reason, and nothing else. */
  private static boolean saysNothing(MeasurementRecord measurement) {
    return measurement
        .rationale()
        .map(Rationale::text)
        .filter(text -> Vocabulary.STANDARD.says(Notion.EMPTY_REASON, text))
        .isPresent();
  }

  /** What a reader makes of words is a note. */
  private static Finding withoutContent(MeasurementRecord measurement) {
    Rationale rationale = measurement.rationale().orElseThrow();
    return DECLARATION
        .withSeverity(Severity.NOTE)
        .finding(
            rationale.address(),
            Message.of("rationale-missing.empty", measurement.name(), rationale.text()),
            Message.of("rationale-missing.expected"));
  }

  private static Finding finding(MeasurementRecord measurement) {
    if (saysNothing(measurement)) {
      return withoutContent(measurement);
    }
    Optional<CellAddress> place = measurement.rationale().map(Rationale::address);
    String found = lacksCause(measurement) ? "rationale-missing.cause" : "rationale-missing.found";
    return DECLARATION.finding(
        place.orElseGet(() -> measurement.placeOrValue(Field.VALUE)),
        Message.of(found, measurement.name()),
        Message.of("rationale-missing.expected"));
  }
}
