package tenthmark.checker.reading.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.wording.Language;

/**
 * The words that the checker reads stand in the vocabulary alone, so that a language is added by a
 * file. Looked at are the texts within the classes: a word in one that is no key of a sentence, no
 * name of a group and no message to a developer is one of a language.
 */
class NoWordInAClassTest {

  private static final Path SOURCES = Path.of("src/main/java/tenthmark/checker");

  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)//.*$");
  private static final Pattern LITERAL = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");
  private static final Pattern DEVELOPERS =
      Pattern.compile("Exception\\(|SuppressWarnings\\(|Message\\.(?:of|counted|joined)\\(");
  private static final Pattern GROUP = Pattern.compile("\\(\\?<(\\w+)>|\\\\\\\\k<(\\w+)>");
  private static final Pattern CLASS =
      Pattern.compile("\\\\\\\\p\\{\\w+}|\\\\\\\\[a-zA-Z]|\\\\[a-z]");
  private static final Pattern WORD =
      Pattern.compile("[^\\W\\d_]{2,}", Pattern.UNICODE_CHARACTER_CLASS);

  /** Arguments of our functions are asked for by the names that their declarations give them. */
  private static final Pattern ASKED_FOR =
      Pattern.compile("(?:\\.(?:number|argument|range|text)\\(|\\bcall, )$");

  private static final Set<String> PARAMETERS =
      Catalogue.load().functions().stream()
          .flatMap(function -> function.declaration().parameters().stream())
          .map(Parameter::name)
          .collect(Collectors.toSet());

  /** The name of a type of Java. */
  private static final Pattern TYPE = Pattern.compile("(?:[A-Z][a-z]+){2,}");

  /** So many letters in a row are a word, known or not. */
  private static final int LONG = 5;

  /** Names of functions in every language, and of our own files. */
  private static final Set<String> SIGNS =
      Set.of("ln", "log", "lg", "exp", "sin", "cos", "tan", "vocabulary");

  private static final Set<String> KEYS = keys();
  private static final Set<String> WORDS = words();

  private static Set<String> keys() {
    Properties texts = new Properties();
    try (InputStream file =
        Files.newInputStream(
            Path.of("src/main/resources/tenthmark/checker/wording/texts.properties"))) {
      texts.load(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return texts.stringPropertyNames();
  }

  private static Set<String> words() {
    Set<String> words = new HashSet<>();
    for (Language language : Language.values()) {
      String suffix = language == Language.ENGLISH ? "" : "_" + language.code();
      Path file =
          Path.of("src/main/resources/tenthmark/checker/reading/words")
              .resolve("vocabulary" + suffix + ".properties");
      try {
        for (String line : Files.readAllLines(file)) {
          Matcher word = WORD.matcher(line.substring(line.indexOf('=') + 1));
          while (!line.startsWith("#") && word.find()) {
            words.add(word.group().toLowerCase(Locale.ROOT));
          }
        }
      } catch (IOException problem) {
        throw new UncheckedIOException(problem);
      }
    }
    return words;
  }

  @TestFactory
  Stream<DynamicTest> classesHoldNone() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String part : List.of("reading", "rules", "record", "carried")) {
      try (Stream<Path> all = Files.walk(SOURCES.resolve(part))) {
        all.filter(file -> file.toString().endsWith(".java")).sorted().forEach(files::add);
      }
    }
    assertThat(files).hasSizeGreaterThan(100);
    return files.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> assertThat(found(Files.readString(file))).isEmpty()));
  }

  /** The words in the texts of a class. */
  private static List<String> found(String source) {
    String code = COMMENT.matcher(source).replaceAll("");
    Set<String> groups = new HashSet<>();
    GROUP.matcher(code).results().forEach(group -> groups.add(group.group(1)));
    List<String> found = new ArrayList<>();
    for (String line : code.lines().toList()) {
      Matcher literal = LITERAL.matcher(line);
      while (literal.find() && !DEVELOPERS.matcher(line).find()) {
        String text = literal.group().substring(1, literal.group().length() - 1);
        boolean argument =
            PARAMETERS.contains(text)
                && ASKED_FOR.matcher(line.substring(0, literal.start())).find();
        if (!argument && !isKey(text) && !groups.contains(text)) {
          wordsIn(text).forEach(found::add);
        }
      }
    }
    return found;
  }

  /** A key of a sentence, or how keys of several begin or end; ids of rules begin theirs. */
  private static boolean isKey(String text) {
    return text.matches("[a-z.-]*[.-][a-z.-]*")
        || KEYS.contains(text)
        || KEYS.contains(text + ".looks-for");
  }

  private static Stream<String> wordsIn(String text) {
    String plain = CLASS.matcher(GROUP.matcher(text).replaceAll("(")).replaceAll(" ");
    return WORD.matcher(plain)
        .results()
        .map(word -> word.group())
        .filter(
            word -> !word.equals(word.toUpperCase(Locale.ROOT)) && !TYPE.matcher(word).matches())
        .map(word -> word.toLowerCase(Locale.ROOT))
        .filter(word -> !SIGNS.contains(word))
        .filter(word -> word.length() >= LONG || WORDS.contains(word));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Set.of(\"nein\")",
        "Pattern.compile(\"\\\\b(?:stoppuhr|by hand)\\\\b\")",
        "text.contains(\"Handgestoppt\")",
        "name.endsWith(\" in\")",
        "String mark = \"höhe\";"
      })
  void aWordWouldBeFound(String code) {
    assertThat(found(code)).isNotEmpty();
  }

  @Test
  void whatIsNoWordIsLeft() {
    assertThat(
            found(
                "Message.of(\"unit-missing.found\"); Pattern.compile(\"(?<size>\\\\d+)\\\\s*µΩ\");"
                    + " found.group(\"size\"); Set.of(\"SUM\", \"AVERAGE\"); // by hand\n"
                    + "throw new IllegalArgumentException(\"a shared formula\");"))
        .isEmpty();
  }
}
