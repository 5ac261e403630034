package tenthmark.checker.reading.words;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words as they are compared: in lower case, without accents and points, with single blanks. */
final class Phrase {

  private static final Pattern PLAIN = Pattern.compile("[a-z0-9 ]*");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern APOSTROPHES = Pattern.compile("[’‘`´]");
  private static final Pattern HYPHENS = Pattern.compile("(?<=[\\p{L}.])[-‐‑](?=\\p{L})");
  private static final Pattern BETWEEN = Pattern.compile("[\\s\\u00A0\\u202F:;,.!?\"“”„]+");

  private Phrase() {}

  static String uniform(String words) {
    String lower = words.toLowerCase(Locale.ROOT).strip();
    if (PLAIN.matcher(lower).matches()) {
      return BETWEEN.matcher(lower).replaceAll(" ");
    }
    String bare = ACCENTS.matcher(Normalizer.normalize(lower, Normalizer.Form.NFD)).replaceAll("");
    String straight = APOSTROPHES.matcher(bare).replaceAll("'");
    return BETWEEN.matcher(HYPHENS.matcher(straight).replaceAll(" ")).replaceAll(" ").strip();
  }

  static List<String> words(String text) {
    String uniform = uniform(text);
    return uniform.isEmpty() ? List.of() : List.of(uniform.split(" ", -1));
  }
}
