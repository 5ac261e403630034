package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.carried.Way;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.Length;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.ScaleReading;
import tenthmark.measurement.recording.Spacing;

/**
 * The convention by which a workbook is written, as far as its records show one; {@code bench} in
 * all that they leave open.
 */
public final class SheetConvention {

  private static final Convention BENCH = Convention.BENCH;

  private final Inspection inspection;

  private SheetConvention(Inspection inspection) {
    this.inspection = inspection;
  }

  /**
   * The one that the workbook holds for its functions, else read off the totals and carried
   * uncertainties, the readings off scales and the timings.
   *
   * @param name what it is called if it is not {@code bench}
   */
  public static Convention of(Inspection inspection, String name) {
    if (inspection.evaluation().conventionCells().isPresent()) {
      return inspection.ofWorkbook();
    }
    SheetConvention sheet = new SheetConvention(inspection);
    Combine combine = sheet.combine();
    Convention own =
        new Convention(
            name,
            sheet.fraction(Spacing.WIDE, combine),
            sheet.fraction(Spacing.FINE, combine),
            combine,
            BENCH.digits(),
            sheet.reaction(),
            BENCH.coverageFactor());
    return own.equals(named(BENCH, name)) ? BENCH : own;
  }

  /**
   * How far apart the marks of a record's scale are: as it says, or as its reading shows.
   *
   * @param convention by which it was read
   */
  public static Optional<Spacing> spacing(MeasurementRecord measurement, Convention convention) {
    Optional<ScaleClaim> scale = measurement.scale();
    return scale
        .flatMap(ScaleClaim::spacing)
        .or(
            () ->
                scale
                    .filter(claim -> claim.fraction().isEmpty())
                    .flatMap(
                        claim ->
                            measurement
                                .number(Field.READING)
                                .flatMap(reading -> shown(claim, reading, convention))));
  }

  /** The one spacing at which one or two ends give this reading. */
  private static Optional<Spacing> shown(ScaleClaim scale, double reading, Convention convention) {
    List<Integer> ends = scale.ends().map(List::of).orElse(List.of(1, 2));
    List<Spacing> fitting =
        Arrays.stream(Spacing.values())
            .filter(
                spacing ->
                    ends.stream()
                        .map(
                            count ->
                                new ScaleReading(
                                    scale.division(), convention.fraction(spacing), count))
                        .anyMatch(one -> Numbers.agreesAsWritten(reading, one.uncertainty())))
            .toList();
    return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
  }

  private static Convention named(Convention convention, String name) {
    return new Convention(
        name,
        convention.wideFraction(),
        convention.fineFraction(),
        convention.combine(),
        convention.digits(),
        convention.reactionSeconds(),
        convention.coverageFactor());
  }

  /** The way that more uncertainties show which fit in one way only. */
  private Combine combine() {
    List<Combine> shown =
        Stream.concat(
                inspection.records().stream().map(SheetConvention::waysOfTotal),
                inspection.carried().map(CarriedComparison::fitting).map(SheetConvention::ways))
            .filter(ways -> ways.size() == 1)
            .map(ways -> ways.get(0))
            .toList();
    long quadratures = shown.stream().filter(Combine.QUADRATURE::equals).count();
    return quadratures > shown.size() - quadratures ? Combine.QUADRATURE : Combine.STRAIGHT;
  }

  private static List<Combine> waysOfTotal(MeasurementRecord measurement) {
    List<Double> sizes = List.copyOf(measurement.contributions().values());
    Optional<Double> total = measurement.number(Field.UNCERTAINTY);
    return Arrays.stream(Combine.values())
        .filter(
            way ->
                total.filter(size -> Numbers.agreesAsWritten(size, way.total(sizes))).isPresent())
        .toList();
  }

  private static List<Combine> ways(Set<Way> fitting) {
    return Arrays.stream(Combine.values()).filter(way -> fitting.contains(Way.of(way))).toList();
  }

  /** The part of a division that all readings show which are not those of bench. */
  private double fraction(Spacing spacing, Combine combine) {
    Convention known =
        new Convention(
            BENCH.name(),
            BENCH.wideFraction(),
            BENCH.fineFraction(),
            combine,
            BENCH.digits(),
            BENCH.reactionSeconds(),
            BENCH.coverageFactor());
    List<Double> fractions = new ArrayList<>();
    for (MeasurementRecord measurement : inspection.records()) {
      Optional<ScaleClaim> scale =
          measurement
              .scale()
              .filter(claim -> claim.fraction().isEmpty())
              .filter(claim -> claim.spacing().orElse(spacing) == spacing);
      Optional<Double> reading = measurement.number(Field.READING).filter(size -> size > 0);
      if (scale.isPresent() && reading.isPresent()) {
        int ends = scale.get().ends().orElse(Length.isBetweenEnds(measurement) ? 2 : 1);
        boolean fits =
            scale.get().readings(known, ends).stream()
                .map(fit -> new HalfWidth(fit.uncertainty()))
                .anyMatch(bound -> bound.agrees(reading.get(), known));
        fractions.add(
            fits ? BENCH.fraction(spacing) : reading.get() / (scale.get().division() * ends));
      }
    }
    return agreed(fractions)
        .filter(fraction -> fraction > 0 && fraction <= 1)
        .orElse(BENCH.fraction(spacing));
  }

  private double reaction() {
    return agreed(
            inspection.records().stream().flatMap(record -> reaction(record).stream()).toList())
        .filter(seconds -> seconds > 0)
        .orElse(BENCH.reactionSeconds());
  }

  /** The reaction time in a column of its own, in a function, or behind a timing and its cycles. */
  private static Optional<Double> reaction(MeasurementRecord measurement) {
    List<Call> calls = measurement.calls(FunctionRole.TIMING);
    if (!calls.isEmpty()) {
      return Optional.of(calls.get(0).number("reaction").orElse(BENCH.reactionSeconds()));
    }
    Optional<Double> timing =
        measurement.number(Field.TIMING).filter(size -> measurement.unit().equals("s"));
    return measurement
        .number(Field.REACTION)
        .or(
            () ->
                timing.flatMap(
                    size -> measurement.number(Field.CYCLES).map(cycles -> size * cycles)));
  }

  /** What all say. */
  private static Optional<Double> agreed(List<Double> numbers) {
    return numbers.stream()
        .findFirst()
        .filter(first -> numbers.stream().allMatch(other -> Numbers.same(first, other)));
  }
}
