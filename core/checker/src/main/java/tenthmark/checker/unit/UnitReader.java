package tenthmark.checker.unit;

import tenthmark.measurement.wording.Message;

/**
 * Reads units as people write them: {@code kg m^2}, {@code kg*m²}, {@code m s-1}, {@code J/(kg·K)}.
 * The library's own parser takes a single symbol only here: of products it reads {@code J/kg/K} as
 * J·K/kg.
 */
public final class UnitReader {

  /** Holds tables that never change. */
  public static final UnitReader STANDARD = new UnitReader();

  private static final int LONGEST = 60;

  private final UnitSymbols symbols = new UnitSymbols();

  private UnitReader() {}

  /** The unit that a text states. */
  public UnitText read(String text) {
    String written = text.strip();
    if (written.isEmpty()) {
      return new UnitText.Unknown(text, Message.of("unit.none"));
    }
    if (written.length() > LONGEST) {
      return new UnitText.Unknown(text, Message.of("unit.long", LONGEST));
    }
    try {
      String spelled = symbols.spelled(Spelling.uniform(written));
      return new UnitText.Known(text, new UnitExpression(spelled, symbols).read());
    } catch (UnitExpression.Unreadable problem) {
      return new UnitText.Unknown(text, problem.said());
    }
  }
}
