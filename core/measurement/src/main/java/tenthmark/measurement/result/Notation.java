package tenthmark.measurement.result;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** The several ways to type one and the same number. */
final class Notation {

  private static final String SPECIAL_SPACES = "[\\u00A0\\u2009\\u202F]";
  private static final Pattern GROUP_SPACE =
      Pattern.compile("(?<=\\d)" + SPECIAL_SPACES + "(?=\\d{3}(?!\\d))");
  private static final Pattern SPECIAL_SPACE = Pattern.compile(SPECIAL_SPACES);
  private static final Pattern PLUS_MINUS = Pattern.compile("\\+/?[-−]");
  private static final Pattern SUPERSCRIPT_POWER = Pattern.compile("(?<=10)[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+");
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺";
  private static final String THEIR_SIGNS = "0123456789-+";
  private static final Pattern POWER_OF_TEN =
      Pattern.compile("(?<=[\\d).,]) *[×·⋅*x] *10\\^(?=[-+−]?\\d)");

  private Notation() {}

  /** The text with ± in that form, ordinary spaces only and {@code e3} for a power of ten. */
  static String normalised(String text) {
    String spaced = SPECIAL_SPACE.matcher(GROUP_SPACE.matcher(text).replaceAll("")).replaceAll(" ");
    String signed = PLUS_MINUS.matcher(spaced).replaceAll("±");
    String raised =
        SUPERSCRIPT_POWER.matcher(signed).replaceAll(power -> "^" + lowered(power.group()));
    return POWER_OF_TEN.matcher(raised).replaceAll("e").strip();
  }

  /** A number with a decimal point or comma, a sign and a power of ten. */
  static BigDecimal number(String text) {
    return new BigDecimal(text.replace(',', '.').replace('−', '-'));
  }

  private static String lowered(String superscripts) {
    StringBuilder lowered = new StringBuilder();
    for (int i = 0; i < superscripts.length(); i++) {
      lowered.append(THEIR_SIGNS.charAt(SUPERSCRIPTS.indexOf(superscripts.charAt(i))));
    }
    return lowered.toString();
  }
}
