package tenthmark.checker.profile;

import java.util.Optional;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.unit.UnitText;
import tenthmark.checker.wording.CheckerTexts;

/** The key that holds a unit. */
final class UnitKey {

  private static final String KEY = "unit";

  private UnitKey() {}

  static Optional<UnitText.Known> read(Section section) {
    Optional<UnitText> unit = section.requiredText(KEY).map(UnitReader.STANDARD::read);
    if (unit.isPresent() && unit.get() instanceof UnitText.Unknown unknown) {
      section.valueProblem(
          KEY, "unit cannot be used: " + CheckerTexts.english().say(unknown.reason()));
    }
    return unit.filter(UnitText.Known.class::isInstance).map(UnitText.Known.class::cast);
  }
}
