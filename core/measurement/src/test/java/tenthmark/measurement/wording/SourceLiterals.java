package tenthmark.measurement.wording;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the code of a module says of keys: the texts in quotation marks, and all the words of it,
 * such as the constants of an enumeration.
 */
public final class SourceLiterals {

  private static final Pattern LITERAL = Pattern.compile("\"([\\w.-]+)\"");
  private static final Pattern WORD = Pattern.compile("\\w+(?:-\\w+)*");

  private final Set<String> literals;
  private final Set<String> words;

  private SourceLiterals(Set<String> literals, Set<String> words) {
    this.literals = literals;
    this.words = words;
  }

  /** Those of the module whose tests run. */
  public static SourceLiterals ofThisModule() {
    String code = code();
    return new SourceLiterals(
        LITERAL
            .matcher(code)
            .results()
            .map(literal -> literal.group(1))
            .collect(Collectors.toUnmodifiableSet()),
        WORD.matcher(code)
            .results()
            .map(MatchResult::group)
            .map(SourceLiterals::uniform)
            .collect(Collectors.toUnmodifiableSet()));
  }

  private static String code() {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(SourceLiterals::content)
          .collect(Collectors.joining("\n"));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static String content(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static String uniform(String word) {
    return word.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The texts in quotation marks. */
  public Set<String> literals() {
    return literals;
  }

  /**
   * Whether the code may say a key: it stands there whole, or its beginning does and each further
   * part is a word of the code.
   */
  public boolean mayName(String key) {
    return literals.contains(key)
        || IntStream.range(0, key.length())
            .filter(at -> key.charAt(at) == '.')
            .anyMatch(at -> isPutTogether(key.substring(0, at), key.substring(at + 1)));
  }

  private boolean isPutTogether(String beginning, String rest) {
    return (literals.contains(beginning) || literals.contains(beginning + "."))
        && Arrays.stream(rest.split("\\.")).map(SourceLiterals::uniform).allMatch(words::contains);
  }
}
