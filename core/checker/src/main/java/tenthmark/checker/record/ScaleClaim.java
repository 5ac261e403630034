package tenthmark.checker.record;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tenthmark.checker.evaluation.Call;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.ScaleReading;
import tenthmark.measurement.recording.Spacing;

/**
 * What a record says about a reading off a scale, in columns of its own or as arguments of
 * LAB_READING.
 *
 * @param division smallest step marked, greater than zero
 * @param spacing how far apart the marks are, if it is said in words
 * @param fraction the part of a division that is judged, if it is said as a number
 * @param ends number of positions read, if it is said
 */
public record ScaleClaim(
    double division, Optional<Spacing> spacing, Optional<Double> fraction, Optional<Integer> ends) {

  static Optional<ScaleClaim> of(MeasurementRecord record) {
    List<Call> calls = record.calls(FunctionRole.READING);
    Optional<Call> call = calls.size() == 1 ? Optional.of(calls.get(0)) : Optional.empty();
    Optional<Double> division =
        record.number(Field.DIVISION).or(() -> call.flatMap(found -> found.number("division")));
    return division
        .filter(size -> size > 0 && Double.isFinite(size))
        .map(
            size ->
                new ScaleClaim(
                    size,
                    record
                        .text(Field.SPACING)
                        .or(() -> call.flatMap(found -> found.text("spacing")))
                        .flatMap(ScaleClaim::spacing),
                    record
                        .number(Field.SPACING)
                        .or(() -> call.flatMap(found -> found.number("spacing"))),
                    record
                        .number(Field.ENDS)
                        .or(() -> call.flatMap(found -> found.number("ends")))
                        .filter(ends -> ends >= 1 && ends == Math.rint(ends))
                        .map(Double::intValue)));
  }

  private static Optional<Spacing> spacing(String word) {
    return Arrays.stream(Spacing.values())
        .filter(spacing -> spacing.name().equals(word.strip().toUpperCase(Locale.ROOT)))
        .findFirst();
  }

  /**
   * The readings that fit what is said under a convention: where the spacing is left open, one for
   * each spacing.
   *
   * @param ends number of positions read
   */
  public List<ScaleReading> readings(Convention convention, int ends) {
    return fraction
        .map(List::of)
        .or(() -> spacing.map(known -> List.of(convention.fraction(known))))
        .orElseGet(() -> Arrays.stream(Spacing.values()).map(convention::fraction).toList())
        .stream()
        .map(part -> new ScaleReading(division, part, ends))
        .toList();
  }
}
