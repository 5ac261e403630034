package tenthmark.checker.wording;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.checker.carried.Way;
import tenthmark.checker.grade.GradeStatus;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.record.Field;
import tenthmark.checker.report.ReadingText;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.RuleDeclaration;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.SentenceFiles;
import tenthmark.measurement.wording.SourceLiterals;
import tenthmark.measurement.wording.TextsInEveryLanguage;

class CheckerTextsTest extends TextsInEveryLanguage {

  private static final Set<String> SIGNS =
      Set.of(
          "contribution",
          "found.formula",
          "list.next",
          "list.plus",
          "text.following",
          "value.uncertain");

  private static final Map<String, String> ENGLISH = ofTheChecker(Language.ENGLISH);
  private static final Set<String> IN_SOURCES = SourceLiterals.ofThisModule().literals();
  private static final Set<String> NAMED = named();

  @Override
  protected Map<String, String> texts(Language language) {
    return ofTheChecker(language);
  }

  private static Map<String, String> ofTheChecker(Language language) {
    return SentenceFiles.texts(CheckerTexts.class, "texts", language);
  }

  /** Signs only, an abbreviation, or one word in both languages. */
  @Override
  protected Set<String> likeEnglish(Language language) {
    Set<String> words =
        switch (language) {
          case GERMAN ->
              Set.of(
                  "class.quantity",
                  "list.further",
                  "page.finding",
                  "page.following",
                  "page.rule",
                  "read.part",
                  "reason.line",
                  "refusal",
                  "text.file");
          case FRENCH ->
              Set.of("factor.turn", "field.cycles", "field.instrument", "heading.contributions");
          case SPANISH ->
              Set.of(
                  "factor.turn",
                  "list.further",
                  "page.finding",
                  "page.following",
                  "page.rule",
                  "read.part",
                  "reason.line",
                  "refusal",
                  "severity.error",
                  "severity.error.one",
                  "text.file");
          case ENGLISH -> Set.of();
        };
    return Stream.of(SIGNS, words).flatMap(Set::stream).collect(toSet());
  }

  @Override
  protected boolean isUsed(String key) {
    return NAMED.contains(key);
  }

  /** All that code names: in its text, or by the values of an enumeration or of a rule's id. */
  private static Set<String> named() {
    Set<String> named = new HashSet<>(IN_SOURCES);
    named.addAll(withEndings(IN_SOURCES));
    Stream.of(
            Arrays.stream(Field.values()).map(Field::inWords),
            Arrays.stream(NumberRole.values()).map(ReadingText::role),
            Arrays.stream(NumberRole.values()).map(role -> ReadingText.counted(role, 1)),
            Arrays.stream(NumberRole.values()).map(role -> ReadingText.counted(role, 2)),
            Arrays.stream(Way.values()).map(Way::inWords),
            Arrays.stream(Severity.values()).map(Severity::inWords),
            Arrays.stream(Severity.values()).map(severity -> severity.counted(1)),
            Arrays.stream(Severity.values()).map(severity -> severity.counted(2)),
            Arrays.stream(GradeStatus.values()).map(GradeStatus::inWords),
            rules().flatMap(CheckerTextsTest::about))
        .flatMap(messages -> messages)
        .map(Message::key)
        .forEach(named::add);
    return named;
  }

  /** What is said about a rule, and what its findings say. */
  @Test
  void areThereForEveryRule() {
    Set<String> ids = rules().map(RuleDeclaration::id).collect(toCollection(HashSet::new));
    Stream<String> inFindings =
        IN_SOURCES.stream()
            .filter(key -> key.contains(".") && ids.contains(key.split("\\.", 2)[0]));
    Stream<String> aboutRules = rules().flatMap(CheckerTextsTest::about).map(Message::key);
    assertThat(
            Stream.concat(aboutRules, inFindings)
                .filter(key -> !ENGLISH.containsKey(key) && !ENGLISH.containsKey(key + ".one")))
        .as("keys that are missing in texts.properties")
        .isEmpty();
  }

  /** One that the functions had as well would be said in the place of theirs. */
  @Test
  void haveKeysOfTheirOwn() {
    Set<String> others = new HashSet<>(SentenceFiles.texts(Language.ENGLISH).keySet());
    others.retainAll(ENGLISH.keySet());
    assertThat(others).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void sayWholeSentencesAboutARule(Language language) {
    rules()
        .flatMap(CheckerTextsTest::about)
        .filter(text -> ENGLISH.containsKey(text.key()))
        .forEach(text -> assertThat(CheckerTexts.in(language).say(text)).endsWith("."));
  }

  private static Stream<RuleDeclaration> rules() {
    return RuleCatalogue.load().rules().stream().map(rule -> rule.declaration());
  }

  private static Stream<Message> about(RuleDeclaration rule) {
    return Stream.of(rule.looksFor(), rule.why(), rule.fix(), rule.example());
  }

  /** Of things that are counted code names the key without its ending. */
  private static Set<String> withEndings(Set<String> keys) {
    return keys.stream()
        .flatMap(key -> Stream.of(key + ".one", key + ".many"))
        .collect(toCollection(TreeSet::new));
  }
}
