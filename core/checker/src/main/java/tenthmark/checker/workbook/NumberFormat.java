package tenthmark.checker.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person sees of a number besides its digits.
 *
 * @param before what is written before it, such as ±
 * @param after what is written behind it, such as mm
 * @param percent whether it is shown in percent, so that 0.02 reads 2 %
 */
public record NumberFormat(String before, String after, boolean percent) {

  /** Digits and nothing else. */
  public static final NumberFormat PLAIN = new NumberFormat("", "", false);

  private static final int LONGEST = 200;

  /** A text, a letter or a distance that is written as it stands, or a colour or a country. */
  private static final Pattern LITERAL =
      Pattern.compile(
          "\"(?<text>[^\"]*)\"|\\\\(?<letter>.)|[_*](?<space>.)|\\[(?<code>[^\\]]{0,60}+)\\]");

  private static final Pattern CURRENCY = Pattern.compile("\\$(?<sign>[^-]*)(?:-.*)?");
  private static final String PLACES = "0#?";

  /** What stands for no text where it is written without quotation marks. */
  private static final String PART_OF_DIGITS = "0#?.,%;@";

  /** Of a format code (ECMA-376 part 1, 18.8.31), the part for positive numbers. */
  static NumberFormat of(String code) {
    if (code == null || code.length() > LONGEST) {
      return PLAIN;
    }
    StringBuilder before = new StringBuilder();
    StringBuilder after = new StringBuilder();
    boolean digits = false;
    boolean percent = false;
    Matcher literal = LITERAL.matcher(code);
    for (int at = 0; at < code.length() && code.charAt(at) != ';'; ) {
      StringBuilder text = digits ? after : before;
      if (literal.region(at, code.length()).lookingAt()) {
        text.append(written(literal));
        at = literal.end();
        continue;
      }
      char sign = code.charAt(at++);
      if (PLACES.indexOf(sign) >= 0) {
        digits = true;
        after.setLength(0);
      } else if (sign == '%') {
        percent = true;
      } else if (Character.isLetter(sign)) {
        // letters without quotation marks make a date of it, but for the exponent
        if (sign != 'E') {
          return PLAIN;
        }
      } else if (PART_OF_DIGITS.indexOf(sign) < 0) {
        text.append(sign);
      }
    }
    return digits ? shared(before.toString().strip(), after.toString().strip(), percent) : PLAIN;
  }

  private static String written(Matcher literal) {
    if (literal.group("text") != null) {
      return literal.group("text");
    }
    if (literal.group("letter") != null) {
      return literal.group("letter");
    }
    if (literal.group("code") == null) {
      return " ";
    }
    Matcher currency = CURRENCY.matcher(literal.group("code"));
    return currency.matches() ? currency.group("sign") : "";
  }

  /** Of a number as a program shows it. */
  static NumberFormat seen(String shown, boolean percent) {
    int first = 0;
    int last = shown.length();
    while (first < last && !Character.isDigit(shown.charAt(first))) {
      first++;
    }
    while (last > first && !Character.isDigit(shown.charAt(last - 1))) {
      last--;
    }
    if (first == last || shown.length() > LONGEST) {
      return percent ? shared("", "", true) : PLAIN;
    }
    String before = shown.substring(0, first).replaceFirst("[-−.,]$", "").strip();
    String after = shown.substring(last).strip();
    return shared(before, percent ? after.replaceFirst("^%", "").strip() : after, percent);
  }

  private static NumberFormat shared(String before, String after, boolean percent) {
    return before.isEmpty() && after.isEmpty() && !percent
        ? PLAIN
        : new NumberFormat(before, after, percent);
  }
}
