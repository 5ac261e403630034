package tenthmark.checker.roster;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of a person's name, whatever their order, letter case, accents and the signs between
 * them: what two lists write alike.
 *
 * @param words of which none is empty
 */
record PersonName(Set<String> words) {

  private static final Pattern ACCENTS = Pattern.compile("\\p{M}");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** Two words are a name; one alone, such as a family's, is many people's. */
  private static final int ENOUGH = 2;

  static PersonName of(String text) {
    String plain = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    return new PersonName(
        Arrays.stream(BETWEEN.split(plain.toLowerCase(Locale.ROOT)))
            .filter(word -> !word.isEmpty())
            .collect(Collectors.toSet()));
  }

  /** Whether all words of one are words of the other, such as without a middle name. */
  boolean agrees(PersonName other) {
    return Math.min(words.size(), other.words.size()) >= ENOUGH
        && (words.containsAll(other.words) || other.words.containsAll(words));
  }
}
