package tenthmark.checker.unit;

import java.text.Normalizer;
import java.util.regex.Pattern;

/** Brings characters that look alike to one. */
final class Spelling {

  /** What is uniform already, as most units are. */
  private static final Pattern LETTERS = Pattern.compile("[A-Za-z]+");

  private static final Pattern DEGREES = Pattern.compile("[º˚]");
  private static final Pattern DOTS =
      Pattern.compile("\\s{0,9}+[·⋅∙•×*]\\s*|(?<=\\p{L})\\.(?=\\p{L})");
  private static final Pattern SOLIDI = Pattern.compile("\\s{0,9}+[/∕⁄÷]\\s*|\\s{1,9}+per\\s+");
  private static final Pattern MINUSES = Pattern.compile("[−–—⁻]");
  private static final Pattern SCALE_DEGREES = Pattern.compile("°\\s+(?=[CF]\\b)");
  private static final Pattern POWERS = Pattern.compile("\\s{0,9}+(?:\\^|\\*\\*)\\s*");
  private static final Pattern BLANKS = Pattern.compile("[\\s\\u00A0\\u2009\\u202F]+");

  private Spelling() {}

  /** Powers become plain digits, products a raised dot or a blank, quotients a solidus. */
  static String uniform(String text) {
    return LETTERS.matcher(text).matches() ? text : respelled(text);
  }

  private static String respelled(String text) {
    String uniform = MINUSES.matcher(text).replaceAll("-");
    uniform = DEGREES.matcher(uniform).replaceAll("°");
    uniform = BLANKS.matcher(uniform).replaceAll(" ");
    // Compatibility decomposition turns m² into m2, ℃ into °C and the micro sign into a Greek mu.
    uniform = Normalizer.normalize(uniform, Normalizer.Form.NFKC);
    uniform = POWERS.matcher(uniform).replaceAll("^");
    uniform = SOLIDI.matcher(uniform).replaceAll("/");
    uniform = DOTS.matcher(uniform).replaceAll("·");
    return SCALE_DEGREES.matcher(uniform).replaceAll("°").strip();
  }
}
