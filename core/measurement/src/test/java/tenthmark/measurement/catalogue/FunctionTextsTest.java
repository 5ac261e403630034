package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.SentenceFiles;
import tenthmark.measurement.wording.Sentences;

/**
 * Holds function wizard and reference to a text for everything in every language. What has no text
 * is told by the first test alone.
 */
class FunctionTextsTest {

  private record Named(Declaration function, Parameter<?> parameter) {}

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void areThereForEveryFunctionAndParameter(Language language) {
    Sentences sentences = Sentences.in(language, DecimalSign.POINT);
    FunctionTexts texts = FunctionTexts.in(sentences);
    Stream<String> ofFunctions =
        declarations().flatMap(one -> Stream.of("wizard." + one.name(), "use." + one.name()));
    Stream<String> ofParameters =
        parameters()
            .filter(one -> texts.key(one.function(), one.parameter()).isEmpty())
            .map(one -> "wizard." + one.function().name() + "." + one.parameter().name());
    assertThat(Stream.concat(ofFunctions, ofParameters).filter(key -> !sentences.knows(key)))
        .as("keys that are missing in the sentences_*.properties of %s", language)
        .isEmpty();
  }

  /** A text for several functions is the translation of one text only. */
  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void areSharedOnlyByParametersThatSayTheSameInEnglish(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    Map<String, Set<String>> english =
        parameters()
            .filter(one -> texts.key(one.function(), one.parameter()).isPresent())
            .collect(
                Collectors.groupingBy(
                    one -> texts.key(one.function(), one.parameter()).orElseThrow(),
                    Collectors.mapping(one -> one.parameter().description(), Collectors.toSet())));
    assertThat(english).allSatisfy((key, said) -> assertThat(said).hasSize(1));
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void areAllUsed(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    Set<String> used =
        Stream.concat(
                declarations().flatMap(one -> texts.key(one).stream()),
                parameters().flatMap(one -> texts.key(one.function(), one.parameter()).stream()))
            .collect(Collectors.toCollection(TreeSet::new));
    used.add("wizard.required");
    assertThat(SentenceFiles.texts(language).keySet().stream().filter(k -> k.startsWith("wizard.")))
        .containsExactlyElementsOf(used);
    assertThat(SentenceFiles.texts(language).keySet().stream().filter(k -> k.startsWith("use.")))
        .isSubsetOf(declarations().map(one -> "use." + one.name()).toList());
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void areSentencesInTheirOwnLanguage(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    assertThat(declarations().filter(one -> texts.key(one).isPresent()))
        .allSatisfy(
            one -> {
              assertThat(texts.description(one)).endsWith(".").isNotEqualTo(one.description());
              assertThat(texts.use(one)).endsWith(".").isNotEqualTo(one.use());
            });
    assertThat(parameters().filter(one -> texts.key(one.function(), one.parameter()).isPresent()))
        .allSatisfy(
            one ->
                assertThat(texts.description(one.function(), one.parameter()))
                    .endsWith(".")
                    .isNotEqualTo(one.parameter().description()));
    assertThat(Family.values())
        .allSatisfy(one -> assertThat(texts.title(one)).isNotEqualTo(one.title()));
  }

  @Test
  void areTheDeclarationsInEnglish() {
    Declaration reading = declarations().filter(d -> d.name().equals("READING")).findFirst().get();
    FunctionTexts english = FunctionTexts.in(Language.ENGLISH);
    assertThat(english.description(reading)).isEqualTo(reading.description());
    assertThat(english.use(reading)).isEqualTo(reading.use());
    assertThat(english.title(reading.family())).isEqualTo(reading.family().title());
    assertThat(english.inWizard(reading, reading.parameters().get(0)))
        .isEqualTo("Smallest step marked on the scale, in the unit of the reading. Must be given.");
  }

  private static Stream<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration);
  }

  private static Stream<Named> parameters() {
    return declarations()
        .flatMap(function -> function.parameters().stream().map(one -> new Named(function, one)));
  }
}
