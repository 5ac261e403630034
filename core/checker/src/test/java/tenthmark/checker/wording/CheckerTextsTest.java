package tenthmark.checker.wording;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tenthmark.checker.carried.Way;
import tenthmark.checker.record.Field;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.SentenceFiles;

class CheckerTextsTest {

  private static final Pattern SINGLE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z-]+(?:\\.[a-z-]+)*)\"");

  private static final Map<String, String> ENGLISH = texts(Language.ENGLISH);

  /** All that code names: in its text, or by the values of an enumeration or of a rule's id. */
  @Test
  void areThoseThatCodeNames() {
    Set<String> named = new TreeSet<>(inSources());
    named.retainAll(ENGLISH.keySet());
    Stream.of(
            Arrays.stream(Field.values()).map(Field::inWords),
            Arrays.stream(Way.values()).map(Way::inWords),
            rules().flatMap(CheckerTextsTest::texts))
        .flatMap(messages -> messages)
        .map(Message::key)
        .forEach(named::add);
    assertThat(ENGLISH.keySet()).isEqualTo(named);
  }

  @Test
  void writeAnApostropheTwice() {
    ENGLISH.forEach(
        (key, text) -> {
          assertThat(SINGLE_APOSTROPHE.matcher(text).find()).as(text).isFalse();
          assertThat(new MessageFormat(text, Locale.ROOT).format(new Object[0]))
              .as(key)
              .isNotBlank();
        });
  }

  @Test
  void sayWholeSentencesAboutARule() {
    rules()
        .flatMap(CheckerTextsTest::texts)
        .forEach(text -> assertThat(CheckerTexts.english().say(text)).endsWith("."));
  }

  private static Stream<RuleDeclaration> rules() {
    return RuleCatalogue.load().rules().stream().map(rule -> rule.declaration());
  }

  private static Stream<Message> texts(RuleDeclaration rule) {
    return Stream.of(rule.looksFor(), rule.why(), rule.fix(), rule.example());
  }

  private static Map<String, String> texts(Language language) {
    return SentenceFiles.texts(CheckerTexts.class, "rules", language);
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
