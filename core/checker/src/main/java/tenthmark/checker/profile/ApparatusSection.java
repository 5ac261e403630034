package tenthmark.checker.profile;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.Specification;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.recording.DisplaySpecification;
import tenthmark.measurement.recording.Spacing;

/** The entries of the list of apparatus. */
final class ApparatusSection {

  private static final String HALF_WIDTH = "half-width";
  private static final String SPACING = "spacing";

  private final Set<String> names = new HashSet<>();

  /** The names read so far. */
  Set<String> names() {
    return names;
  }

  Optional<Apparatus> read(Section section) {
    Optional<String> name = section.requiredText("name");
    if (name.isPresent() && !names.add(name.get())) {
      section.valueProblem("name", "there is an apparatus " + name.get() + " above");
    }
    List<String> also = section.texts("also");
    ApparatusKind kind =
        section.choice("kind", Words.of(ApparatusKind.values())).orElse(ApparatusKind.SCALE);
    Optional<Double> division = section.requiredNumber("division", Range.POSITIVE);
    Optional<UnitText.Known> unit = UnitKey.read(section);
    boolean isFraction = section.isNumber(SPACING);
    Optional<Double> fraction =
        isFraction ? section.number(SPACING, Range.FRACTION) : Optional.empty();
    Optional<Spacing> spacing =
        isFraction ? Optional.empty() : section.choice(SPACING, Words.of(Spacing.values()));
    if ((isFraction || spacing.isPresent()) && kind != ApparatusKind.SCALE) {
      section.keyProblem(SPACING, "only a scale has a spacing of marks");
    }
    Optional<Specification> specification = specification(section, division);
    section.close();
    return name.isEmpty() || division.isEmpty() || unit.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Apparatus(
                name.get(),
                also,
                kind,
                division.get(),
                unit.get(),
                spacing,
                fraction,
                specification));
  }

  private static Optional<Specification> specification(Section section, Optional<Double> division) {
    Optional<Double> halfWidth = section.number(HALF_WIDTH, Range.NOT_NEGATIVE);
    Optional<Double> percent = section.number("percent", Range.NOT_NEGATIVE);
    Optional<Double> counts = section.number("counts", Range.NOT_NEGATIVE);
    boolean ofDisplay = percent.isPresent() || counts.isPresent();
    if (halfWidth.isPresent() && ofDisplay) {
      section.keyProblem(HALF_WIDTH, "give either half-width or percent and counts");
    }
    if (halfWidth.isPresent()) {
      return halfWidth.map(Specification.HalfWidth::new);
    }
    return division
        .filter(size -> ofDisplay)
        .map(
            size ->
                new Specification.OfDisplay(
                    new DisplaySpecification(size, percent.orElse(0.0), counts.orElse(0.0))));
  }
}
