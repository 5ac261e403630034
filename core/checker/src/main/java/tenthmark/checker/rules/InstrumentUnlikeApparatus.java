package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.Optional;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;

/** An instrument uncertainty that is not the maker's. */
@AutoService(Rule.class)
public final class InstrumentUnlikeApparatus implements ApparatusRule {

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration(
          "instrument-unlike-apparatus",
          Severity.WARNING,
          "An instrument uncertainty that does not follow from the maker's specification in the "
              + "course's list.",
          "How far an instrument may be off is for its maker to say.",
          "Take the specification from the list, for a display with =LAB_DISPLAY(resolution; "
              + "reading; percent; counts).",
          "4.15 bar with 0.0415 off a gauge specified to 1 % and 2 counts of 0.01 bar; "
              + "0.0615 bar is right.");

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public Optional<Finding> check(
      MeasurementRecord measurement, Apparatus apparatus, Inspection inspection) {
    Optional<Double> specified = specified(measurement, apparatus);
    Optional<Double> instrument = measurement.number(Field.INSTRUMENT);
    boolean unknown =
        (measurement.cell(Field.INSTRUMENT).isPresent() && instrument.isEmpty())
            || measurement.contributions().isEmpty();
    return specified
        .filter(
            size ->
                !unknown
                    && !new HalfWidth(size).agrees(instrument.orElse(0.0), inspection.convention()))
        .map(
            size ->
                DECLARATION.finding(
                    measurement.placeOrValue(Field.INSTRUMENT),
                    "the instrument uncertainty of "
                        + measurement.name()
                        + " is "
                        + instrument.map(Numbers::show).orElse("missing"),
                    Numbers.show(size, RecordUnits.text(measurement, Field.INSTRUMENT))
                        + ", the maker's specification of the "
                        + apparatus.name()));
  }

  /** In the unit in which the record gives it. */
  private static Optional<Double> specified(MeasurementRecord measurement, Apparatus apparatus) {
    return apparatus
        .specification()
        .flatMap(
            specification ->
                measurement
                    .number(Field.VALUE)
                    .flatMap(
                        value ->
                            RecordUnits.from(measurement, Field.VALUE, apparatus.unit())
                                .map(conversion -> conversion.value(value)))
                    .map(specification::uncertainty))
        .flatMap(
            size ->
                RecordUnits.to(apparatus.unit(), measurement, Field.INSTRUMENT)
                    .map(conversion -> conversion.difference(size)))
        .filter(Double::isFinite);
  }
}
