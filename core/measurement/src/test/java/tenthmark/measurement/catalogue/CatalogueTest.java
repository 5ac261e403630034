package tenthmark.measurement.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/** Holds every worksheet function to what the function reference and the wizard need. */
class CatalogueTest {

  private static final Catalogue CATALOGUE = Catalogue.load();
  private static final String SENTENCE = "(?s)\\p{Lu}.*[^.]\\.";

  @Test
  void namesAreUnique() {
    assertThat(CATALOGUE.functions())
        .isNotEmpty()
        .extracting(function -> function.declaration().name())
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void functionsAreFoundByBothNamesInAnyCase(Declaration declaration) {
    assertThat(CATALOGUE.find(declaration.displayName().toLowerCase(Locale.ROOT)))
        .hasValueSatisfying(found -> assertThat(found.declaration()).isSameAs(declaration));
    assertThat(CATALOGUE.find(declaration.storedName().toLowerCase(Locale.ROOT)))
        .hasValueSatisfying(found -> assertThat(found.declaration()).isSameAs(declaration));
  }

  /** Whoever adds a function says what its result is in a record; few are nothing to it. */
  @Test
  void everyFunctionHasARole() {
    assertThat(declarations().filter(declaration -> declaration.role() == FunctionRole.OTHER))
        .extracting(Declaration::displayName)
        .containsExactlyInAnyOrder(
            "LAB_BUDGET",
            "LAB_CARRYPAIR",
            "LAB_CARRYTABLE",
            "LAB_EXTREMES",
            "LAB_RATIONALE",
            "LAB_READBACK");
  }

  @Test
  void oneFunctionGivesEachContribution() {
    assertThat(declarations().map(Declaration::role).filter(FunctionRole::isContribution))
        .containsExactlyInAnyOrder(
            FunctionRole.READING,
            FunctionRole.PHYSICAL,
            FunctionRole.INSTRUMENT,
            FunctionRole.TIMING,
            FunctionRole.REPEAT);
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void descriptionsAreSentences(Declaration declaration) {
    assertThat(declaration.description()).matches(SENTENCE);
    assertThat(declaration.use()).endsWith(".").hasSizeGreaterThan(20);
    assertThat(declaration.formula()).isNotBlank();
    assertThat(declaration.source()).isNotBlank();
    assertThat(declaration.parameters())
        .allSatisfy(
            parameter -> {
              assertThat(parameter.description()).matches(SENTENCE);
              assertThat(parameter.allowed().toString()).isNotBlank();
            });
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void defaultsAreDescribed(Declaration declaration) {
    assertThat(declaration.parameters())
        .filteredOn(Parameter::isOptional)
        .allSatisfy(
            parameter ->
                assertThat(parameter.description()).containsAnyOf("left out", "Left out", "only"));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void examplesGiveTheirResult(Example example) {
    gives(example, Sentences.english());
  }

  /** What the reference shows in a language is what the function gives in an office of it. */
  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void examplesGiveTheirResultInEveryLanguage(Language language) {
    Sentences sentences = Sentences.in(language);
    FunctionTexts texts = FunctionTexts.in(sentences);
    declarations().forEach(declaration -> gives(texts.example(declaration), sentences));
  }

  private static void gives(Example example, Sentences sentences) {
    Value result = firstCell(ExampleCall.of(example).run(CATALOGUE, sentences));
    if (result instanceof Value.Numeric numeric) {
      BigDecimal printed = new BigDecimal(example.result().replace(',', '.'));
      assertThat(new BigDecimal(numeric.number()).setScale(printed.scale(), RoundingMode.HALF_UP))
          .isEqualTo(printed);
    } else {
      assertThat(result).isEqualTo(Value.of(example.result()));
    }
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void examplesCallTheirFunction(Declaration declaration) {
    assertThat(declaration.example().formula()).startsWith("=" + declaration.displayName() + "(");
  }

  static Stream<Declaration> declarations() {
    return CATALOGUE.functions().stream().map(WorksheetFunction::declaration);
  }

  static Stream<Example> examples() {
    return declarations().map(Declaration::example);
  }

  private static Value firstCell(Value result) {
    return result instanceof Value.Table table ? table.cells().get(0) : result;
  }
}
