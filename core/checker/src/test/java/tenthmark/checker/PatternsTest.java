package tenthmark.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every pattern is tried on texts made to have it search in vain, one of them four times as long as
 * the other: it may look at about four times as many characters, not at sixteen times as many. What
 * is counted are characters, so that no load of the machine plays a part.
 *
 * <p>Tried are the patterns in static fields of the checker and of what it measures with, and those
 * written where a text is matched, replaced or split. Not tried are patterns put together while the
 * checker runs, as those of the words of a language and of a profile are, and texts of more than
 * two signs in turn. A pattern of which the source shows that it is only ever matched with a whole
 * text is tried so; every other one is searched for as well.
 */
class PatternsTest {

  private static final int SHORT = 128;
  private static final int TIMES = 4;

  /** Between what a linear and what a square search takes of a text four times as long. */
  private static final double MOST = 7;

  /** What every pattern is tried on beside its own signs. */
  private static final List<String> SIGNS = List.of("a", "1", " ", "(", "[", "\"", "'", ",", "=");

  private static final int MOST_OWN_SIGNS = 12;

  /** What fits the end of hardly any pattern. */
  private static final String END = "!";

  private static final List<Path> SOURCES =
      List.of(Path.of("src/main/java"), Path.of("../measurement/src/main/java"));

  /** What a matcher does beside matching a whole text. */
  private static final String SEARCHING =
      "(?:find|lookingAt|region|results|replaceAll|replaceFirst)\\(";

  private static final Pattern INLINE =
      Pattern.compile(
          "\\.(?<call>matches|replaceAll|replaceFirst|split)"
              + "\\(\\s*\"(?<regex>(?:[^\"\\\\]|\\\\.)*+)\"");

  /** A pattern, where it stands, and whether it is only matched with the whole of a text. */
  record Named(String place, Pattern pattern, boolean whole) {
    @Override
    public String toString() {
      return place + ": " + pattern;
    }
  }

  /** Counts the characters that are looked at. */
  private static final class Counted implements CharSequence {

    private final String text;
    private long looks;

    Counted(String text) {
      this.text = text;
    }

    @Override
    public char charAt(int index) {
      looks++;
      return text.charAt(index);
    }

    @Override
    public int length() {
      return text.length();
    }

    @Override
    public CharSequence subSequence(int start, int end) {
      return text.substring(start, end);
    }

    @Override
    public String toString() {
      return text;
    }
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void looksAtAsManyMoreCharactersAsThereAre(Named named) {
    List<String> slow = new ArrayList<>();
    Set<String> signs = signs(named.pattern());
    for (String one : signs) {
      for (String other : signs) {
        String part = one.equals(other) ? one : one + other;
        if (growth(named.pattern(), part, true) > MOST) {
          slow.add("matches " + part);
        }
        if (!named.whole() && growth(named.pattern(), part, false) > MOST) {
          slow.add("finds " + part);
        }
      }
    }
    assertThat(slow).as("%s", named).isEmpty();
  }

  @Test
  void tellsASquareSearchFromALinearOne() {
    assertThat(growth(Pattern.compile("a+$"), "a", false)).isGreaterThan(MOST);
    assertThat(growth(Pattern.compile("(?<!a)a++$"), "a", false)).isLessThan(MOST);
  }

  @Test
  void findsThePatterns() throws IOException {
    assertThat(patterns())
        .hasSizeGreaterThan(150)
        .anyMatch(Named::whole)
        .extracting(Named::place)
        .contains("HeadingGrammar.GIVEN", "RecordText.ALONE", "Heading.java");
  }

  /** How many times as many characters are looked at in a text that is {@link #TIMES} as long. */
  private static double growth(Pattern pattern, String part, boolean whole) {
    long few = looks(pattern, part.repeat(SHORT / part.length()) + END, whole);
    long many = looks(pattern, part.repeat(SHORT * TIMES / part.length()) + END, whole);
    return many / (double) Math.max(SHORT, few);
  }

  private static long looks(Pattern pattern, String text, boolean whole) {
    Counted counted = new Counted(text);
    Matcher matcher = pattern.matcher(counted);
    boolean more = whole ? matcher.matches() : matcher.find();
    while (more && !whole) {
      more = matcher.find();
    }
    return counted.looks;
  }

  private static Set<String> signs(Pattern pattern) {
    Set<String> signs = new LinkedHashSet<>(SIGNS);
    pattern
        .pattern()
        .replaceAll("\\\\p\\{[^}]*\\}|\\\\[a-zA-Z]|\\(\\?<[a-z]+>", "")
        .codePoints()
        .filter(c -> c != '\\')
        .mapToObj(Character::toString)
        .distinct()
        .limit(MOST_OWN_SIGNS)
        .forEach(signs::add);
    return signs;
  }

  static List<Named> patterns() throws IOException {
    List<Named> all = new ArrayList<>();
    for (Path sources : SOURCES) {
      try (Stream<Path> files = Files.walk(sources)) {
        for (Path file :
            files.filter(path -> path.toString().endsWith(".java")).sorted().toList()) {
          String source = Files.readString(file);
          all.addAll(inline(file, source));
          if (source.contains("Pattern.compile(")) {
            all.addAll(fields(type(sources.relativize(file)), source));
          }
        }
      }
    }
    return all;
  }

  private static Class<?> type(Path file) {
    String name = file.toString().replace('/', '.').replaceFirst("\\.java$", "");
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException impossible) {
      throw new IllegalStateException(name, impossible);
    }
  }

  private static List<Named> fields(Class<?> type, String source) {
    List<Named> named = new ArrayList<>();
    for (Field field : type.getDeclaredFields()) {
      if (field.getType() == Pattern.class && Modifier.isStatic(field.getModifiers())) {
        String place = type.getSimpleName() + "." + field.getName();
        named.add(new Named(place, value(field), isMatchedWhole(field.getName(), source)));
      }
    }
    for (Class<?> nested : type.getDeclaredClasses()) {
      named.addAll(fields(nested, source));
    }
    return named;
  }

  private static Pattern value(Field field) {
    try {
      field.setAccessible(true);
      return (Pattern) field.get(null);
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException(field.toString(), impossible);
    }
  }

  private static List<Named> inline(Path file, String source) {
    return INLINE
        .matcher(source)
        .results()
        .map(
            found ->
                new Named(
                    file.getFileName().toString(),
                    Pattern.compile(found.group(2).translateEscapes()),
                    found.group(1).equals("matches")))
        .toList();
  }

  /** Whether each matcher of a pattern is asked for the whole text, at once or by its variable. */
  private static boolean isMatchedWhole(String name, String source) {
    Matcher use =
        Pattern.compile("(?:Matcher (?<variable>\\w+) =\\s*)?\\b" + name + "\\s*\\.matcher\\(")
            .matcher(source);
    boolean used = false;
    while (use.find()) {
      used = true;
      String rest = source.substring(closing(source, use.end())).strip();
      String variable = use.group("variable");
      if (!rest.startsWith(".matches()") && (variable == null || isSearched(variable, source))) {
        return false;
      }
    }
    return used && !source.contains(name + ".split(");
  }

  private static boolean isSearched(String variable, String source) {
    String call = "\\b" + variable + "\\s*\\.";
    boolean whole = Pattern.compile(call + "matches\\(").matcher(source).find();
    return !whole || Pattern.compile(call + SEARCHING).matcher(source).find();
  }

  /** Where the bracket ends that is open at a place. */
  private static int closing(String source, int from) {
    int open = 1;
    int at = from;
    for (; open > 0; at++) {
      open += source.charAt(at) == '(' ? 1 : source.charAt(at) == ')' ? -1 : 0;
    }
    return at;
  }
}
