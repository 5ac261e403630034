package tenthmark.checker.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.course.Origin;
import tenthmark.checker.course.Specification;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.record.ScaleClaim;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.SheetConvention;
import tenthmark.checker.rules.UnitMissing;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.recording.DisplaySpecification;
import tenthmark.measurement.recording.Spacing;

/**
 * A first profile out of a workbook: the quantities, units and divisions of its records, its
 * convention, and how its tables were read. A value in the workbook never becomes an accepted
 * value.
 */
public final class ProfileStart {

  private static final UnitText.Known ONE = (UnitText.Known) UnitReader.STANDARD.read("1");
  private static final UnitText.Known SECOND = (UnitText.Known) UnitReader.STANDARD.read("s");

  private final List<Apparatus> apparatus = new ArrayList<>();
  private final List<ExpectedQuantity> quantities = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();
  private final Inspection inspection;
  private final Convention convention;

  private ProfileStart(Inspection inspection, Convention convention) {
    this.inspection = inspection;
    this.convention = convention;
    inspection.records().forEach(this::add);
  }

  /**
   * Writes the profile.
   *
   * @param workbook its name, for the comment at the top
   */
  public static String write(String workbook, Inspection inspection) {
    String name = oneLine(workbook);
    Convention convention = SheetConvention.of(inspection, "as in " + name);
    ProfileStart start = new ProfileStart(inspection, convention);
    return new ProfileYaml()
            .write(name, convention, start.apparatus, start.quantities, start.unknown)
        + new TablesYaml(inspection).write();
  }

  /** The first record of a name stands for all. */
  private void add(MeasurementRecord measurement) {
    Optional<String> name =
        measurement.text(Field.QUANTITY).or(() -> measurement.text(Field.SYMBOL));
    Predicate<String> known =
        text -> quantities.stream().anyMatch(other -> other.name().equalsIgnoreCase(text));
    name.map(ProfileStart::oneLine)
        .filter(text -> !text.isEmpty() && !known.test(text))
        .ifPresent(text -> add(text, measurement));
  }

  /** One whose unit is not known cannot be expected, nor one that lacks the unit that it owes. */
  private void add(String name, MeasurementRecord measurement) {
    if (measurement.unit().isEmpty() && owesUnit(measurement)) {
      unknown.add(name + ", with which no unit stands");
    } else if (measurement.unit().isEmpty() || unit(measurement, Field.VALUE).isPresent()) {
      quantities.add(quantity(name, measurement));
    } else {
      unknown.add(name + " in " + oneLine(measurement.unit()));
    }
  }

  private boolean owesUnit(MeasurementRecord measurement) {
    return measurement.isUnitTold() || new UnitMissing().check(measurement, inspection).isPresent();
  }

  private ExpectedQuantity quantity(String name, MeasurementRecord measurement) {
    boolean calculated =
        measurement.isSlope() || measurement.isCalculatedFrom(inspection.reading().values());
    boolean physical =
        measurement.number(Field.PHYSICAL).filter(size -> size != 0).isPresent()
            || !measurement.calls(FunctionRole.PHYSICAL).isEmpty();
    Optional<Apparatus> instrument = calculated ? Optional.empty() : instrument(measurement);
    return new ExpectedQuantity(
        name,
        measurement.text(Field.SYMBOL).map(ProfileStart::oneLine),
        List.of(),
        unit(measurement, Field.VALUE).orElse(ONE),
        Optional.empty(),
        calculated ? Origin.CALCULATED : Origin.MEASURED,
        true,
        physical,
        instrument.map(this::listed));
  }

  /** The name of an apparatus, which goes into the list if it is not there. */
  private String listed(Apparatus found) {
    if (!apparatus.contains(found)
        && apparatus.stream().noneMatch(item -> item.name().equals(found.name()))) {
      apparatus.add(found);
    }
    return found.name();
  }

  private Optional<Apparatus> instrument(MeasurementRecord measurement) {
    List<Call> displays = measurement.calls(FunctionRole.INSTRUMENT);
    if (displays.size() == 1) {
      return display(measurement, displays.get(0));
    }
    Optional<Double> resolution = measurement.number(Field.RESOLUTION).filter(size -> size > 0);
    return resolution.isPresent()
        ? display(measurement, resolution.get(), Field.RESOLUTION, Optional.empty())
        : scale(measurement);
  }

  private Optional<Apparatus> scale(MeasurementRecord measurement) {
    Optional<ScaleClaim> scale = measurement.scale();
    Optional<UnitText.Known> unit = unit(measurement, Field.DIVISION);
    Optional<Spacing> spacing = SheetConvention.spacing(measurement, convention);
    return scale.isEmpty() || unit.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Apparatus(
                "scale in "
                    + ProfileYaml.number(scale.get().division())
                    + " "
                    + unit.get().text()
                    + spacing.map(word -> ", " + Words.word(word)).orElse(""),
                List.of(),
                ApparatusKind.SCALE,
                scale.get().division(),
                unit.get(),
                spacing,
                Optional.empty(),
                Optional.empty()));
  }

  private static Optional<Apparatus> display(MeasurementRecord measurement, Call call) {
    Optional<Double> resolution = number(call, "resolution").filter(size -> size > 0);
    Optional<Double> percent = number(call, "percent");
    Optional<Double> counts = number(call, "counts");
    Optional<Specification> specification =
        resolution
            .filter(size -> percent.isPresent() || counts.isPresent())
            .filter(size -> isKnown(call, "percent") && isKnown(call, "counts"))
            .map(
                size ->
                    new Specification.OfDisplay(
                        new DisplaySpecification(size, percent.orElse(0.0), counts.orElse(1.0))));
    return resolution.flatMap(size -> display(measurement, size, Field.INSTRUMENT, specification));
  }

  private static Optional<Apparatus> display(
      MeasurementRecord measurement,
      double resolution,
      Field field,
      Optional<Specification> specification) {
    return unit(measurement, field)
        .map(
            unit -> {
              ApparatusKind kind =
                  isByHand(measurement, unit) ? ApparatusKind.STOPWATCH : ApparatusKind.DISPLAY;
              return new Apparatus(
                  Words.word(kind) + " in " + ProfileYaml.number(resolution) + " " + unit.text(),
                  List.of(),
                  kind,
                  resolution,
                  unit,
                  Optional.empty(),
                  Optional.empty(),
                  specification);
            });
  }

  /** In a table for records of any kind the function stands in every row; only times are timed. */
  private static boolean isByHand(MeasurementRecord measurement, UnitText.Known unit) {
    return !measurement.calls(FunctionRole.TIMING).isEmpty()
        && SECOND.unit().to(unit.unit()).isPresent();
  }

  /** Whether an argument is left out or has a value that the checker can tell. */
  private static boolean isKnown(Call call, String parameter) {
    return call.argument(parameter).isEmpty()
        || call.argument(parameter).flatMap(Call.Argument::value).isPresent();
  }

  private static Optional<Double> number(Call call, String parameter) {
    return call.number(parameter).filter(number -> number >= 0 && Double.isFinite(number));
  }

  /** The unit of a part, if the checker knows it. */
  private static Optional<UnitText.Known> unit(MeasurementRecord measurement, Field field) {
    String own = measurement.unit(field);
    UnitText text = UnitReader.STANDARD.read(own.isEmpty() ? measurement.unit() : own);
    return text instanceof UnitText.Known known ? Optional.of(known) : Optional.empty();
  }

  static String oneLine(String text) {
    return text.replaceAll("[\\s\\p{Cntrl}\\p{Cf}\\p{Co}\\p{Cs}\\p{Cn}]+", " ").strip();
  }
}
