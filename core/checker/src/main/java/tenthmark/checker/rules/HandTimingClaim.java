package tenthmark.checker.rules;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.unit.Conversion;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.recording.HandTiming;

/**
 * What a record of a time taken by hand says about its timing contribution.
 *
 * @param timing the contribution, in the unit of the record; empty for none
 * @param known whether the contribution, the cycles and the reaction that stand there could be told
 * @param counts the numbers of cycles that may be meant; none if several are timed and nothing says
 *     how many
 * @param reactionSeconds the record's own reaction time, or the course's where that is none that
 *     anybody has
 * @param fromSeconds to the unit of the record
 */
record HandTimingClaim(
    Optional<Double> timing,
    boolean known,
    Set<Integer> counts,
    double reactionSeconds,
    Conversion fromSeconds) {

  /**
   * Who starts sooner than 0.1 s after the shot had not heard it: World Athletics, Technical Rules,
   * 16.6, from memory.
   */
  private static final double LEAST_REACTION = 0.1;

  private static final Pattern WHOLE =
      Pattern.compile("(?<![\\p{L}\\d.,$])\\d{1,4}(?![\\d.,]*\\d)");

  static HandTimingClaim of(
      MeasurementRecord measurement, Inspection inspection, Conversion fromSeconds) {
    Optional<Call> call = measurement.calls(FunctionRole.TIMING).stream().findFirst();
    Optional<Double> inCall =
        call.flatMap(found -> found.number("reaction"))
            .map(size -> size / fromSeconds.difference(1));
    double usual = inspection.convention().reactionSeconds();
    Optional<Double> stated =
        measurement
            .number(Field.REACTION)
            .or(() -> inCall)
            .filter(seconds -> seconds >= Math.min(LEAST_REACTION, usual));
    boolean unknown =
        measurement.cell(Field.TIMING).isPresent() && measurement.number(Field.TIMING).isEmpty();
    boolean leftToFunction = call.isPresent() && call.get().argument("reaction").isEmpty();
    return new HandTimingClaim(
        measurement.number(Field.TIMING).or(() -> call.flatMap(HandTimingClaim::result)),
        !unknown && !leftToFunction && call.stream().allMatch(HandTimingClaim::isTold),
        counts(measurement, call, inspection),
        stated.orElse(usual),
        fromSeconds);
  }

  private static boolean isTold(Call call) {
    return call.number("cycles").isPresent() && call.number("reaction").isPresent();
  }

  private static Optional<Double> result(Call call) {
    return call.number("cycles")
        .flatMap(cycles -> call.number("reaction").map(reaction -> reaction / cycles));
  }

  /** The count in its column or in the function, else each that the record mentions. */
  private static Set<Integer> counts(
      MeasurementRecord measurement, Optional<Call> call, Inspection inspection) {
    Optional<Double> stated =
        measurement
            .number(Field.CYCLES)
            .or(() -> call.flatMap(found -> found.number("cycles")))
            .filter(count -> count >= 1);
    if (stated.isPresent()) {
      return Set.of(stated.get().intValue());
    }
    Set<Integer> mentioned = new LinkedHashSet<>(mentioned(measurement, inspection.evaluation()));
    if (mentioned.isEmpty() && mentionsCycles(measurement, inspection)) {
      return Set.of();
    }
    mentioned.add(1);
    return mentioned;
  }

  private static List<Integer> mentioned(MeasurementRecord measurement, Evaluation evaluation) {
    Stream<Cell> formulas =
        Stream.of(Field.TIMING, Field.VALUE, Field.UNCERTAINTY)
            .flatMap(field -> measurement.cell(field).stream());
    Stream<Integer> calculatedWith =
        formulas.flatMap(
            cell ->
                Stream.concat(
                    wholes(cell.content() instanceof Content.Formula formula ? formula.text() : ""),
                    evaluation.precedents(cell).stream()
                        .flatMap(behind -> evaluation.number(behind.address()).stream())
                        .filter(number -> number == Math.rint(number))
                        .map(Double::intValue)));
    return Stream.concat(wholes(measurement.wording()), calculatedWith)
        .filter(count -> count > 1)
        .toList();
  }

  private static Stream<Integer> wholes(String text) {
    return WHOLE.matcher(text).results().map(MatchResult::group).map(Integer::valueOf);
  }

  /** Whether it says that several cycles were timed, in words alone. */
  private static boolean mentionsCycles(MeasurementRecord measurement, Inspection inspection) {
    String words = measurement.wording().toLowerCase(Locale.ROOT);
    return inspection.course().headings().of(Role.CYCLES).stream().anyMatch(words::contains);
  }

  /** The number of cycles for which a contribution is the largest that is asked for. */
  int cycles() {
    return counts.stream().min(Integer::compare).orElse(1);
  }

  /** The contribution that the record needs, in its unit. */
  double expected() {
    return expected(cycles());
  }

  private double expected(int cycles) {
    return fromSeconds.difference(new HandTiming(cycles, reactionSeconds).uncertainty());
  }

  /** Whether the contribution is not smaller than the reaction time, as far as that can be told. */
  boolean isEnough() {
    return !known
        || timing
            .filter(size -> size > 0)
            .filter(
                size -> counts.isEmpty() || counts.stream().anyMatch(count -> fits(size, count)))
            .isPresent();
  }

  private boolean fits(double size, int count) {
    double expected = expected(count);
    return size >= expected || Numbers.agreesAsWritten(size, expected);
  }
}
