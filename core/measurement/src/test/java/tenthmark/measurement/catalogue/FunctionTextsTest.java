package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
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

  /** LibreOffice 7.4 cuts what does not fit into two lines of its wizard, of some 70 signs each. */
  private static final int TWO_LINES = 135;

  /** A formula or a source without words is the same in every language. */
  private static final Set<String> SIGNS = Set.of("JCGM 100:2008, G.4.1 (Welch-Satterthwaite)");

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
    assertThat(SentenceFiles.texts(language).keySet())
        .filteredOn(key -> key.matches("reference\\.(formula|source|example)\\..*"))
        .isSubsetOf(inReference());
  }

  private static Set<String> inReference() {
    Set<String> keys = new TreeSet<>(Set.of("reference.source.none"));
    for (String root : List.of("reference.formula.", "reference.source.")) {
      declarations().map(one -> root + one.name()).forEach(keys::add);
      Stream.of(Family.values()).map(one -> root + "family." + one).forEach(keys::add);
    }
    declarations()
        .forEach(
            one -> {
              String key = "reference.example." + one.name();
              keys.add(key);
              List<List<Value>> rows = one.example().cells();
              for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                  keys.add(key + "." + (char) ('A' + column) + (row + 1));
                }
              }
            });
    return keys;
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

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void sayEachFormulaAndSourceInTheirOwnLanguage(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    Stream<String> formulas =
        inEnglish(texts::formula, Declaration::formula).map(name -> "reference.formula." + name);
    Stream<String> sources =
        inEnglish(texts::source, Declaration::source).map(name -> "reference.source." + name);
    assertThat(Stream.concat(formulas, sources))
        .as("keys that are missing in %s, where the English has words (else: SIGNS)", language)
        .isEmpty();
  }

  /** The functions of which the English is said. */
  private static Stream<String> inEnglish(
      Function<Declaration, String> said, Function<Declaration, String> english) {
    return declarations()
        .filter(one -> said.apply(one).equals(english.apply(one)))
        .filter(one -> !SIGNS.contains(english.apply(one)))
        .map(Declaration::name);
  }

  /** A text for a family stands for one English text only, where a function has none of its own. */
  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void sayTheSameOnlyOfFunctionsThatSayTheSameInEnglish(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    assertThat(english(texts::formula, Declaration::formula))
        .allSatisfy((said, english) -> assertThat(english).as(said).hasSize(1));
    assertThat(english(texts::source, Declaration::source))
        .allSatisfy((said, english) -> assertThat(english).as(said).hasSize(1));
  }

  private static Map<String, Set<String>> english(
      Function<Declaration, String> said, Function<Declaration, String> english) {
    return declarations()
        .collect(Collectors.groupingBy(said, Collectors.mapping(english, Collectors.toSet())));
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void translateEachTextInTheCellsOfAnExample(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    assertThat(declarations().map(texts::example).flatMap(FunctionTextsTest::words))
        .doesNotContainAnyElementsOf(
            declarations().map(Declaration::example).flatMap(FunctionTextsTest::words).toList());
  }

  /** Words in the cells that no two languages share, as they do a name such as m or a formula. */
  private static Stream<String> words(Example example) {
    return example.cells().stream()
        .flatMap(List::stream)
        .map(cell -> cell instanceof Value.Text text ? text.text() : "")
        .filter(text -> !text.startsWith("=") && text.length() > 1)
        .filter(text -> !text.equals("volume / cm³"));
  }

  @ParameterizedTest
  @EnumSource
  void fitIntoTheWizard(Language language) {
    FunctionTexts texts = FunctionTexts.in(language);
    assertThat(parameters().map(one -> texts.inWizard(one.function(), one.parameter())).distinct())
        .allSatisfy(text -> assertThat(text).hasSizeLessThanOrEqualTo(TWO_LINES));
  }

  @Test
  void areTheDeclarationsInEnglish() {
    Declaration reading = declarations().filter(d -> d.name().equals("READING")).findFirst().get();
    FunctionTexts english = FunctionTexts.in(Language.ENGLISH);
    assertThat(english.description(reading)).isEqualTo(reading.description());
    assertThat(english.use(reading)).isEqualTo(reading.use());
    assertThat(english.formula(reading)).isEqualTo(reading.formula());
    assertThat(english.source(reading)).isEqualTo(reading.source());
    assertThat(english.example(reading)).isEqualTo(reading.example());
    assertThat(english.title(reading.family())).isEqualTo(reading.family().title());
    assertThat(english.inWizard(reading, reading.parameters().get(0)))
        .isEqualTo("Must be given. Smallest step marked on the scale, in the unit of the reading.");
  }

  private static Stream<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration);
  }

  private static Stream<Named> parameters() {
    return declarations()
        .flatMap(function -> function.parameters().stream().map(one -> new Named(function, one)));
  }
}
