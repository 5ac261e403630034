package tenthmark.checker.unit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  /** A power of ten before a unit, as in 10³ Hz² or 10^-3 m. */
  private static final Pattern POWER_OF_TEN =
      Pattern.compile(
          "10\\s*(?:\\^\\s*\\(?(?<plain>[-−]?\\d{1,2})\\)?|(?<raised>⁻?[⁰¹²³⁴-⁹]{1,2}))"
              + "\\s*[·*×]?\\s*(?<unit>[/\\p{L}].*)");

  private final UnitSymbols symbols = new UnitSymbols();

  private UnitReader() {}

  /** The symbols of a unit that is written as a word, or the text itself. */
  public String symbols(String text) {
    return symbols.spelled(text.strip());
  }

  /** The unit that a text states. */
  public UnitText read(String text) {
    String written = text.strip();
    if (written.isEmpty()) {
      return new UnitText.Unknown(text, Message.of("unit.none"));
    }
    if (written.length() > LONGEST) {
      return new UnitText.Unknown(text, Message.of("unit.long", LONGEST));
    }
    Matcher power = POWER_OF_TEN.matcher(written);
    if (power.matches()) {
      return scaled(text, power);
    }
    try {
      String spelled = symbols.spelled(Spelling.uniform(written));
      return new UnitText.Known(text, new UnitExpression(spelled, symbols).read());
    } catch (UnitExpression.Unreadable problem) {
      return new UnitText.Unknown(text, problem.said());
    }
  }

  private UnitText scaled(String text, Matcher power) {
    String raised = power.group("plain") == null ? power.group("raised") : power.group("plain");
    int exponent = Integer.parseInt(Spelling.uniform(raised));
    String rest = power.group("unit");
    UnitText unit = read(rest.startsWith("/") ? "1" + rest : rest);
    return unit.known()
        .map(known -> (UnitText) new UnitText.Known(text, known.scaled(exponent)))
        .orElse(unit);
  }
}
