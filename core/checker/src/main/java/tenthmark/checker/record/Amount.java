package tenthmark.checker.record;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.checker.reading.words.Notion;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.checker.unit.UnitReader;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.result.RecordText;

/**
 * A number in a cell, with the unit if the cell states one.
 *
 * @param unit empty if the cell holds a bare number
 */
public record Amount(double number, String unit) {

  private static final Pattern SIGN = Pattern.compile("^(?:±|\\+\\s?/?\\s?[-−–])\\s*");
  private static final int LONGEST = 300;
  private static final Pattern EQUALS = Pattern.compile("[=:≈]\\s*(?=[-+−(\\d])");
  private static final Pattern END = Pattern.compile("(?<![.,;])[.,;]++$");
  private static final Pattern IN_SENTENCE =
      Pattern.compile(
          "(?<numbers>\\(?[-−]?(?<!\\d)\\d++(?:[.,]\\d++)?\\s*+±\\s*\\d+(?:[.,]\\d+)?\\)?)"
              + "(?:\\s*[\\p{L}°µΩ%][\\p{L}\\p{N}°µΩ%/·^²³⁻¹]*)?");
  private static final Pattern NAMED =
      Pattern.compile(
          "(?<name>(?<![^\\s=:≈(])[^\\s=:≈(]++(?:\\([^)]{0,60}+\\))?)\\s*+[=:≈]\\s*(?=[-+−(\\d])");

  /** The number that a value stands for: a number, or a text such as {@code 0,5 mm} or "none". */
  public static Optional<Amount> of(Value value) {
    if (value instanceof Value.Numeric number) {
      return Optional.of(new Amount(number.number(), ""));
    }
    if (!(value instanceof Value.Text text)) {
      return Optional.empty();
    }
    if (Vocabulary.STANDARD.says(Notion.NONE, text.text())) {
      return Optional.of(new Amount(0, ""));
    }
    return stated(SIGN.matcher(text.text().strip()).replaceFirst(""))
        .map(record -> new Amount(record.value().doubleValue(), record.unit()));
  }

  /** The result that a text states, be it behind a name as in {@code g = (9.80 ± 0.13) m/s²}. */
  public static Optional<RecordText> stated(String text) {
    return RecordText.readFinite(text).or(() -> within(text));
  }

  /** The first result in a sentence that has an uncertainty. */
  public static Optional<RecordText> inSentence(String text) {
    Matcher found = IN_SENTENCE.matcher(text);
    return text.length() <= LONGEST && found.find()
        ? RecordText.readFinite(withoutEnd(found.group()))
            .filter(record -> isShortUnit(Optional.of(record)))
            .or(() -> RecordText.readFinite(found.group("numbers")))
            .filter(record -> record.uncertainty().isPresent())
        : Optional.empty();
  }

  /** The result after the sign of equality in a text, as far as it goes. */
  private static Optional<RecordText> within(String text) {
    Matcher equals = EQUALS.matcher(text);
    while (text.length() <= LONGEST && equals.find()) {
      String rest = text.substring(equals.end());
      Optional<RecordText> whole = RecordText.readFinite(withoutEnd(rest));
      if (whole.isPresent()) {
        return whole;
      }
      for (int cut = rest.lastIndexOf(' '); cut > 0; cut = rest.lastIndexOf(' ', cut - 1)) {
        Optional<RecordText> found = RecordText.readFinite(withoutEnd(rest.substring(0, cut)));
        if (found.flatMap(RecordText::uncertainty).filter(u -> isShortUnit(found)).isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isShortUnit(Optional<RecordText> found) {
    String unit = found.map(RecordText::unit).orElse("");
    return unit.isEmpty()
        || !unit.contains("(") && UnitReader.STANDARD.read(unit).known().isPresent();
  }

  private static String withoutEnd(String text) {
    return END.matcher(text).replaceFirst("").strip();
  }

  /** The name before a stated result; empty if it has none. */
  public static String nameBefore(String text) {
    Matcher named = NAMED.matcher(text);
    return named.find() ? named.group("name") : "";
  }
}
