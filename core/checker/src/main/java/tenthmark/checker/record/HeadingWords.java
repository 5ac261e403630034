package tenthmark.checker.record;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words by which headings name the parts of a record.
 *
 * @param fields by words in lower case with single blanks
 */
public record HeadingWords(Map<String, Field> fields) {

  private static final Pattern BLANKS = Pattern.compile("[\\s:]+");

  /** The words of the trade. */
  public static final HeadingWords STANDARD = new HeadingWords(Map.of()).with(Field.words());

  /** Copies the words. */
  public HeadingWords {
    fields = Map.copyOf(fields);
  }

  /** These words and others, which have precedence. */
  public HeadingWords with(Map<Field, List<String>> others) {
    Map<String, Field> all = new HashMap<>(fields);
    others.forEach((field, words) -> words.forEach(word -> all.put(uniform(word), field)));
    return new HeadingWords(all);
  }

  /** The field that words name, whatever their case, if they name one. */
  Optional<Field> named(String words) {
    return Optional.ofNullable(fields.get(uniform(words)));
  }

  /** The words that name a field. */
  Set<String> of(Field field) {
    return fields.entrySet().stream()
        .filter(word -> word.getValue() == field)
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  /** Words in lower case with single blanks. */
  static String uniform(String words) {
    return BLANKS.matcher(words.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
  }
}
