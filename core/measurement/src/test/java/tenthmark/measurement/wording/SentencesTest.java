package tenthmark.measurement.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import tenthmark.measurement.rounding.DecimalSign;

class SentencesTest {

  @Nested
  class Files {

    private static final Pattern GAP = Pattern.compile("\\{\\d+[^}]*}");
    private static final Pattern SINGLE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");

    /** Texts that are right as they are in English: signs only, or one word in both languages. */
    private static final Map<Language, Set<String>> LIKE_ENGLISH =
        Map.of(
            Language.GERMAN,
            Set.of(
                "quantity",
                "rationale.list.next",
                "verbatim",
                "words.ADD",
                "words.SUBTRACT",
                "words.minus",
                "words.PI.0"),
            Language.FRENCH,
            Set.of(
                "quantity",
                "rationale.list.next",
                "verbatim",
                "result.exact",
                "kind.instrument",
                "label.total",
                "column.contribution",
                "words.ADD",
                "words.PI.0"),
            Language.SPANISH,
            Set.of("quantity", "rationale.list.next", "verbatim", "label.total", "words.PI.0"));

    @ParameterizedTest
    @EnumSource
    void haveEveryText(Language language) {
      assertThat(texts(language).keySet())
          .containsExactlyElementsOf(texts(Language.ENGLISH).keySet());
      assertThat(texts(language).values()).allSatisfy(text -> assertThat(text).isNotBlank());
    }

    @ParameterizedTest
    @EnumSource
    void leaveTheSameGaps(Language language) {
      Map<String, String> english = texts(Language.ENGLISH);
      texts(language)
          .forEach((key, text) -> assertThat(gaps(text)).as(key).isEqualTo(gaps(english.get(key))));
    }

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
    void areTranslated(Language language) {
      Map<String, String> english = texts(Language.ENGLISH);
      Set<String> same =
          texts(language).entrySet().stream()
              .filter(text -> text.getValue().equals(english.get(text.getKey())))
              .map(Map.Entry::getKey)
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(same).isEqualTo(new TreeSet<>(LIKE_ENGLISH.get(language)));
    }

    /** Else MessageFormat drops it and leaves the gaps after it open. */
    @ParameterizedTest
    @EnumSource
    void writeAnApostropheTwice(Language language) {
      SentenceFiles.texts(language)
          .forEach(
              (key, text) -> {
                assertThat(SINGLE_APOSTROPHE.matcher(text).find()).as(text).isFalse();
                assertThat(new MessageFormat(text, Locale.ROOT).format(new Object[0]))
                    .as(key)
                    .isNotBlank();
              });
    }

    private static Set<String> gaps(String text) {
      return GAP.matcher(text)
          .results()
          .map(MatchResult::group)
          .collect(Collectors.toCollection(TreeSet::new));
    }

    /** All but the texts about functions, whose English stands in the declarations. */
    private static Map<String, String> texts(Language language) {
      Map<String, String> texts = SentenceFiles.texts(language);
      texts.keySet().removeIf(Files::isAboutAFunction);
      return texts;
    }

    private static boolean isAboutAFunction(String key) {
      return key.matches("(wizard|use|family)\\..*") && !key.equals("wizard.required");
    }
  }

  @Nested
  class Messages {

    private static final Sentences GERMAN = Sentences.in(Language.GERMAN, DecimalSign.COMMA);

    @Test
    void areSaidWithAllThatIsInTheirGaps() {
      Message message =
          Message.of(
              "refused",
              Message.of("argument.row", "division", 3),
              Message.verbatim(new Message.Figure("-0.5")),
              Message.of("allowed.positive"));
      assertThat(message)
          .hasToString("division (row 3) is -0.5; it must be a number greater than zero.");
      assertThat(GERMAN.say(message))
          .isEqualTo("division (Zeile 3) ist -0,5; erlaubt ist eine Zahl größer als null.");
    }

    @Test
    void leaveWhatAStudentWroteAsItIs() {
      assertThat(GERMAN.say(Message.of("found.text", "it''s {0} 1.5")))
          .isEqualTo("der Text „it''s {0} 1.5“");
    }

    @Test
    void changeThePointsOfNumbersOnly() {
      assertThat(GERMAN.say(Message.verbatim(new Message.Figure("T.INV(0.5; 1.25E-7) Nr. 3"))))
          .isEqualTo("T.INV(0,5; 1,25E-7) Nr. 3");
    }
  }

  @Nested
  class Languages {

    @Test
    void areThoseOfALocaleOrEnglish() {
      assertThat(
              Arrays.asList("de-AT", "fr-CA", "es-MX", "en-GB", "it-IT", "").stream()
                  .map(Locale::forLanguageTag)
                  .map(Language::of))
          .containsExactly(
              Language.GERMAN,
              Language.FRENCH,
              Language.SPANISH,
              Language.ENGLISH,
              Language.ENGLISH,
              Language.ENGLISH);
    }

    /** The office may run under any locale of the system. */
    @Test
    void doNotDependOnTheSystem() {
      Locale own = Locale.getDefault();
      try {
        Locale.setDefault(Locale.FRANCE);
        assertThat(Sentences.english().say("kind.reading")).isEqualTo("reading");
        assertThat(Sentences.in(Language.GERMAN, DecimalSign.COMMA).say("kind.reading"))
            .isEqualTo("Ablesung");
      } finally {
        Locale.setDefault(own);
      }
    }

    @Test
    void areAllReadFromUtf8() {
      assertThat(Sentences.inEveryLanguage("kind.repeat"))
          .containsExactly("repeat", "Wiederholung", "répétition", "repetición");
    }
  }
}
