package tenthmark.checker.profile;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The constants of an enum by the words that stand for them in a profile. */
final class Words {

  private Words() {}

  static <E extends Enum<E>> Map<String, E> of(E[] constants) {
    Map<String, E> words = new LinkedHashMap<>();
    Arrays.stream(constants).forEach(constant -> words.put(word(constant), constant));
    return words;
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
