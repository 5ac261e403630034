package tenthmark.checker.course;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.unit.UnitText;
import tenthmark.measurement.recording.Spacing;

/**
 * An instrument on the course's benches.
 *
 * @param name what the course calls it
 * @param also what students call it besides
 * @param kind how it shows its value
 * @param division the smallest step marked, or one count of the last digit, in {@code unit}
 * @param unit of the division and of the maker's half-width
 * @param spacing of the marks of a scale, if it is given
 * @param fraction part of a division that is judged on a scale, if the course gives it as a number
 * @param specification the maker's, if it is given
 */
public record Apparatus(
    String name,
    List<String> also,
    ApparatusKind kind,
    double division,
    UnitText.Known unit,
    Optional<Spacing> spacing,
    Optional<Double> fraction,
    Optional<Specification> specification) {

  /** Copies the other names. */
  public Apparatus {
    also = List.copyOf(also);
  }

  /** The longest of its names, in lower case, that stands in a text. */
  Optional<String> nameWithin(String text) {
    return Names.of(name, also).within(text);
  }
}
