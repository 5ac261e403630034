package tenthmark.checker.course;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What one thing is called.
 *
 * @param all its names, of which none is empty
 */
record Names(List<String> all) {

  private static final Pattern BRACKETS = Pattern.compile("\\([^)]{0,90}+\\)|\\[[^\\]]{0,90}+\\]");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

  static Names of(String name, List<String> also) {
    return new Names(
        Stream.concat(Stream.of(name), also.stream())
            .map(Names::words)
            .filter(words -> !words.isEmpty())
            .toList());
  }

  /**
   * Whether a text is one of the names, but for case, punctuation and what it has in brackets
   * beside the name. A name that has brackets itself is meant with them.
   */
  boolean include(String text) {
    return all.contains(words(text)) || all.contains(words(BRACKETS.matcher(text).replaceAll(" ")));
  }

  /** The longest of the names that stands in a text. */
  Optional<String> within(String text) {
    String words = " " + words(text) + " ";
    return all.stream()
        .filter(name -> words.contains(" " + name + " "))
        .reduce((one, other) -> one.length() >= other.length() ? one : other);
  }

  private static String words(String text) {
    return BETWEEN_WORDS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
  }
}
