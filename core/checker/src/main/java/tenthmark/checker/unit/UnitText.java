package tenthmark.checker.unit;

import java.util.Optional;
import tenthmark.measurement.wording.Message;

/** What a unit's text was read as. */
public sealed interface UnitText {

  /** The text as it was written. */
  String text();

  /** A unit. */
  record Known(String text, MeasurementUnit unit) implements UnitText {}

  /**
   * No unit that the checker knows.
   *
   * @param reason a sentence without its end
   */
  record Unknown(String text, Message reason) implements UnitText {}

  /** The unit, if it is known. */
  default Optional<MeasurementUnit> known() {
    return this instanceof Known known ? Optional.of(known.unit()) : Optional.empty();
  }
}
