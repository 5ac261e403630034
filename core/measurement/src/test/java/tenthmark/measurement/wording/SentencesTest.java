package tenthmark.measurement.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.rounding.DecimalSign;

class SentencesTest {

  @Nested
  class Files extends TextsInEveryLanguage {

    private static final SourceLiterals CODE = SourceLiterals.ofThisModule();
    private static final Set<String> SIGNS =
        Set.of("quantity", "rationale.list.next", "verbatim", "words.PI.0", "worked.length.A3");

    @Override
    protected Map<String, String> texts(Language language) {
      return SentenceFiles.texts(language);
    }

    @Override
    protected Set<String> likeEnglish(Language language) {
      Set<String> words =
          switch (language) {
            case GERMAN ->
                Set.of(
                    "titled",
                    "error.shown.DIVISION",
                    "error.shown.NAME",
                    "reference.parameter",
                    "words.ADD",
                    "words.SUBTRACT",
                    "words.minus");
            case FRENCH ->
                Set.of(
                    "result.exact",
                    "kind.instrument",
                    "label.pair.covariance",
                    "label.total",
                    "column.contribution",
                    "reference.source",
                    "words.ADD");
            case SPANISH ->
                Set.of("titled", "label.total", "error.shown.code", "worked.error.A3.shows");
            case ENGLISH -> Set.of();
          };
      return Stream.of(SIGNS, words).flatMap(Set::stream).collect(Collectors.toSet());
    }

    /**
     * A function of the spreadsheet program may be explained that is in no code of ours; the
     * reference and its worked examples are made by the generator, whose tests look at theirs.
     */
    @Override
    protected boolean isUsed(String key) {
      return CODE.mayName(key)
          || key.matches("(words\\.[A-Z]+|reference\\..+|worked\\..+)")
          || key.equals("functions.missing");
    }

    /** The English of the texts about functions stands in the declarations. */
    @Override
    protected boolean isDeclared(String key) {
      return key.matches("(wizard|use|family|reference\\.(formula|source|example))\\..+")
          && !key.equals("wizard.required");
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
              Arrays.asList("de-AT", "fr-CA", "es-MX", "en-GB", "la", "").stream()
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
          .hasSameSizeAs(Language.values())
          .startsWith("repeat", "Wiederholung", "répétition", "repetición");
    }
  }
}
