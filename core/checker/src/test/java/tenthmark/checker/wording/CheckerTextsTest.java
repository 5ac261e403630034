package tenthmark.checker.wording;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import tenthmark.checker.carried.Way;
import tenthmark.checker.record.Field;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.SentenceFiles;

class CheckerTextsTest {

  private static final Pattern GAP = Pattern.compile("\\{\\d+}");
  private static final Pattern SINGLE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z-]+(?:\\.[a-z-]+)*)\"");

  /** Signs only, an abbreviation, or one word in both languages. */
  private static final Map<Language, Set<String>> LIKE_ENGLISH =
      Map.of(
          Language.GERMAN,
          Set.of(
              "class.quantity",
              "list.further",
              "page.finding",
              "page.rule",
              "reason.line",
              "refusal",
              "text.file"),
          Language.FRENCH,
          Set.of("field.cycles", "field.instrument", "heading.contributions"),
          Language.SPANISH,
          Set.of(
              "list.further",
              "page.finding",
              "page.rule",
              "reason.line",
              "refusal",
              "severity.error",
              "severity.error.one",
              "text.file"));

  private static final Set<String> SIGNS =
      Set.of("contribution", "found.formula", "list.next", "list.plus", "value.uncertain");

  private static final Map<String, String> ENGLISH = texts(Language.ENGLISH);

  /** All that code names: in its text, or by the values of an enumeration or of a rule's id. */
  @Test
  void areThoseThatCodeNames() {
    Set<String> named = inSources();
    named.addAll(withEndings(named));
    Stream.of(
            Arrays.stream(Field.values()).map(Field::inWords),
            Arrays.stream(Way.values()).map(Way::inWords),
            Arrays.stream(Severity.values()).map(Severity::inWords),
            Arrays.stream(Severity.values()).map(severity -> severity.counted(1)),
            Arrays.stream(Severity.values()).map(severity -> severity.counted(2)),
            rules().flatMap(CheckerTextsTest::texts))
        .flatMap(messages -> messages)
        .map(Message::key)
        .forEach(named::add);
    named.retainAll(ENGLISH.keySet());
    assertThat(named).isEqualTo(ENGLISH.keySet());
  }

  /** What is said about a rule, and what its findings say. */
  @Test
  void areThereForEveryRule() {
    Set<String> ids = rules().map(RuleDeclaration::id).collect(toCollection(HashSet::new));
    Stream<String> inFindings =
        inSources().stream()
            .filter(key -> key.contains(".") && ids.contains(key.split("\\.", 2)[0]));
    Stream<String> aboutRules = rules().flatMap(CheckerTextsTest::texts).map(Message::key);
    assertThat(
            Stream.concat(aboutRules, inFindings)
                .filter(key -> !ENGLISH.containsKey(key) && !ENGLISH.containsKey(key + ".one")))
        .as("keys that are missing in rules.properties")
        .isEmpty();
  }

  /** One that both files, or the functions, had as well would be said in the place of another. */
  @Test
  void haveKeysOfTheirOwn() {
    Set<String> others = new HashSet<>(SentenceFiles.texts(Language.ENGLISH).keySet());
    others.retainAll(ENGLISH.keySet());
    assertThat(others).isEmpty();
    assertThat(ENGLISH)
        .hasSize(
            texts("rules", Language.ENGLISH).size() + texts("reports", Language.ENGLISH).size());
  }

  @ParameterizedTest
  @EnumSource
  void areCompleteInEveryLanguage(Language language) {
    assertThat(texts(language).keySet()).isEqualTo(ENGLISH.keySet());
    assertThat(texts(language).values()).allSatisfy(text -> assertThat(text).isNotBlank());
  }

  @ParameterizedTest
  @EnumSource
  void leaveTheSameGapsInEveryLanguage(Language language) {
    texts(language)
        .forEach((key, text) -> assertThat(gaps(text)).as(key).isEqualTo(gaps(ENGLISH.get(key))));
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void areTranslated(Language language) {
    Set<String> same =
        texts(language).entrySet().stream()
            .filter(text -> text.getValue().equals(ENGLISH.get(text.getKey())))
            .map(Map.Entry::getKey)
            .filter(key -> !SIGNS.contains(key))
            .collect(toCollection(TreeSet::new));
    assertThat(same).isEqualTo(new TreeSet<>(LIKE_ENGLISH.get(language)));
  }

  @ParameterizedTest
  @EnumSource
  void writeAnApostropheTwice(Language language) {
    texts(language)
        .forEach(
            (key, text) -> {
              assertThat(SINGLE_APOSTROPHE.matcher(text).find()).as(text).isFalse();
              assertThat(new MessageFormat(text, Locale.ROOT).format(new Object[0]))
                  .as(key)
                  .isNotBlank();
            });
  }

  @ParameterizedTest
  @EnumSource
  void sayWholeSentencesAboutARule(Language language) {
    rules()
        .flatMap(CheckerTextsTest::texts)
        .filter(text -> ENGLISH.containsKey(text.key()))
        .forEach(text -> assertThat(CheckerTexts.in(language).say(text)).endsWith("."));
  }

  private static Stream<RuleDeclaration> rules() {
    return RuleCatalogue.load().rules().stream().map(rule -> rule.declaration());
  }

  private static Stream<Message> texts(RuleDeclaration rule) {
    return Stream.of(rule.looksFor(), rule.why(), rule.fix(), rule.example());
  }

  private static Map<String, String> texts(Language language) {
    Map<String, String> texts = new TreeMap<>(texts("rules", language));
    texts.putAll(texts("reports", language));
    return texts;
  }

  private static Map<String, String> texts(String file, Language language) {
    return SentenceFiles.texts(CheckerTexts.class, file, language);
  }

  private static Set<String> gaps(String text) {
    return GAP.matcher(text).results().map(MatchResult::group).collect(toCollection(TreeSet::new));
  }

  /** Of things that are counted code names the key without its ending. */
  private static Set<String> withEndings(Set<String> keys) {
    return keys.stream()
        .flatMap(key -> Stream.of(key + ".one", key + ".many"))
        .collect(toCollection(TreeSet::new));
  }

  private static Set<String> inSources() {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(CheckerTextsTest::content)
          .flatMap(content -> LITERAL.matcher(content).results())
          .map(literal -> literal.group(1))
          .collect(toCollection(TreeSet::new));
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
}
