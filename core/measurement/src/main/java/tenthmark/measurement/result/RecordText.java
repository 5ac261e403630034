package tenthmark.measurement.result;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.measurement.wording.Sentences;

/**
 * What a record text says, whatever its {@link Style}. Besides what the styles write it may have
 * {@code +/-} or {@code +-} for ±, a decimal comma, thin or no-break spaces, and a power of ten as
 * {@code ·10^3}, {@code x10^3}, {@code ×10³} or {@code e3}; and it is exact in any language.
 *
 * @param uncertainty in the unit of the value; empty if the text states none
 * @param unit empty if the text states none
 */
public record RecordText(BigDecimal value, Optional<BigDecimal> uncertainty, String unit) {

  /** What a unit looks like, so that it can be told from the numbers before it. */
  public static final Pattern UNIT =
      Pattern.compile("(?!x *10)(?:1/)?[\\p{L}°%‰′″'\"/][^±\\p{Cntrl}]*");

  private static final int LONGEST = 2000;

  private static final List<String> EXACT = Sentences.inEveryLanguage(Style.EXACT);

  private static final String DIGITS = "(?:\\d++(?:[.,]\\d*+)?+|[.,]\\d++)";
  private static final String EXPONENT = "[eE][-+−]?\\d{1,4}";
  private static final String NUMBER = DIGITS + "(?:" + EXPONENT + ")?";
  private static final String SHARED_POWER = "(?<power>" + EXPONENT + ")?";
  private static final String UNIT_OR_NONE = " *(?<unit>" + UNIT.pattern() + ")?";

  private static final Pattern BRIEF =
      Pattern.compile(
          ("(?<value>[-+−]?" + DIGITS + ")\\((?<uncertainty>" + DIGITS + ")\\)")
              + SHARED_POWER
              + UNIT_OR_NONE);
  private static final Pattern BRACKETED =
      Pattern.compile(
          ("\\( *(?<value>[-+−]?" + NUMBER + ") *± *(?<uncertainty>" + NUMBER + ") *\\)")
              + SHARED_POWER
              + UNIT_OR_NONE);
  private static final Pattern SEPARATE =
      Pattern.compile(
          ("(?<value>[-+−]?" + NUMBER + ")" + UNIT_OR_NONE + " *± *")
              + ("(?<uncertainty>" + NUMBER + ") *(?<second>" + UNIT.pattern() + ")?"));
  private static final Pattern ALONE =
      Pattern.compile("(?<value>[-+−]?" + NUMBER + ")" + UNIT_OR_NONE);

  /** Reads a text; empty if it is not a record. */
  public static Optional<RecordText> read(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = Notation.normalised(text);
    return brief(plain).or(() -> bracketed(plain)).or(() -> separate(plain)).or(() -> alone(plain));
  }

  /**
   * Reads a text; empty if it is not a record, or has a number such as 1e999, which no cell can
   * hold and which would go on as infinite.
   */
  public static Optional<RecordText> readFinite(String text) {
    return read(text)
        .filter(record -> Double.isFinite(record.value().doubleValue()))
        .filter(
            record -> Double.isFinite(record.uncertainty().orElse(BigDecimal.ZERO).doubleValue()));
  }

  private static Optional<RecordText> brief(String text) {
    Matcher record = BRIEF.matcher(text);
    if (!record.matches()) {
      return Optional.empty();
    }
    BigDecimal value = Notation.number(record.group("value"));
    BigDecimal uncertainty = Notation.number(record.group("uncertainty"));
    boolean inLastDigits = uncertainty.scale() == 0;
    return Optional.of(
        record(
            record,
            value,
            inLastDigits ? uncertainty.scaleByPowerOfTen(-value.scale()) : uncertainty));
  }

  private static Optional<RecordText> bracketed(String text) {
    Matcher record = BRACKETED.matcher(text);
    return record.matches()
        ? Optional.of(
            record(
                record,
                Notation.number(record.group("value")),
                Notation.number(record.group("uncertainty"))))
        : Optional.empty();
  }

  private static RecordText record(Matcher record, BigDecimal value, BigDecimal uncertainty) {
    BigDecimal power =
        record.group("power") == null
            ? BigDecimal.ONE
            : Notation.number("1" + record.group("power"));
    return new RecordText(
        value.multiply(power), Optional.of(uncertainty.multiply(power)), unit(record, "unit"));
  }

  private static Optional<RecordText> separate(String text) {
    Matcher record = SEPARATE.matcher(text);
    if (!record.matches()) {
      return Optional.empty();
    }
    BigDecimal value = Notation.number(record.group("value"));
    BigDecimal uncertainty = Notation.number(record.group("uncertainty"));
    String first = unit(record, "unit");
    String second = unit(record, "second");
    if (second.equals("%")) {
      BigDecimal part = value.abs().multiply(uncertainty).movePointLeft(2);
      return Optional.of(new RecordText(value, Optional.of(part), first));
    }
    return first.isEmpty() || second.isEmpty() || first.equals(second)
        ? Optional.of(
            new RecordText(value, Optional.of(uncertainty), first.isEmpty() ? second : first))
        : Optional.empty();
  }

  private static Optional<RecordText> alone(String text) {
    Optional<String> word = EXACT.stream().filter(text::endsWith).findFirst();
    boolean exact = word.isPresent();
    String stated = text.substring(0, text.length() - word.orElse("").length());
    Matcher record = ALONE.matcher(stated.strip());
    return record.matches()
        ? Optional.of(
            new RecordText(
                Notation.number(record.group("value")),
                exact ? Optional.of(BigDecimal.ZERO) : Optional.empty(),
                unit(record, "unit")))
        : Optional.empty();
  }

  private static String unit(Matcher record, String group) {
    return record.group(group) == null ? "" : record.group(group).strip();
  }
}
