package tenthmark.addin.generator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionTexts;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.explanation.ErrorKind;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.SentenceFiles;
import tenthmark.measurement.wording.Sentences;

class ReferencePageTest {

  @ParameterizedTest
  @MethodSource("declarations")
  void explainsEveryFunctionAndParameter(Declaration declaration) throws Exception {
    Element section = section(english(Generator.declarations()), declaration);
    assertThat(Markups.texts(section, "h3")).containsExactly(declaration.signature());
    assertThat(Markups.texts(section, "p")).startsWith(declaration.description());
    assertThat(Markups.texts(section, "dd"))
        .startsWith(declaration.use(), declaration.formula(), declaration.source())
        .allSatisfy(text -> assertThat(text).isNotBlank());
    for (Parameter<?> parameter : declaration.parameters()) {
      assertThat(Markups.texts(section, "td"))
          .contains(parameter.description(), parameter.allowed().toString());
    }
    assertThat(section.getTextContent())
        .contains(declaration.example().formula(), declaration.example().result());
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "ENGLISH")
  void isThereInEveryLanguage(Language language) throws Exception {
    Map<String, String> files = Generator.files(Generator.declarations());
    String name = "extension/function-reference-" + language.code();
    String text = files.get(name + ".html");
    FunctionTexts texts = FunctionTexts.in(language);
    assertThat(Markups.parse(text).getDocumentElement().getAttribute("lang"))
        .isEqualTo(language.code());
    for (Declaration declaration : Generator.declarations()) {
      Element section = section(text, declaration);
      assertThat(Markups.texts(section, "p")).startsWith(texts.description(declaration));
      assertThat(Markups.texts(section, "dd"))
          .startsWith(
              texts.use(declaration), texts.formula(declaration), texts.source(declaration));
      assertThat(section.getTextContent())
          .contains(texts.example(declaration).formula(), texts.example(declaration).result());
      for (Parameter<?> parameter : declaration.parameters()) {
        assertThat(Markups.texts(section, "td"))
            .contains(texts.description(declaration, parameter), texts.allowed(parameter));
      }
      assertThat(files.get(name + "/" + declaration.displayName() + ".html"))
          .contains("url=../function-reference-" + language.code() + ".html#");
    }
  }

  /** None is kept that nobody reads; what stands around a gap is enough. */
  @ParameterizedTest
  @EnumSource
  void saysEveryTextForIt(Language language) {
    String pages = String.join("\n", Generator.files(Generator.declarations()).values());
    Sentences sentences = Sentences.in(language);
    assertThat(SentenceFiles.texts(language).keySet())
        .filteredOn(key -> key.startsWith("reference.") || key.startsWith("worked."))
        .allSatisfy(
            key ->
                assertThat(sentences.say(key, "|").split("\\|"))
                    .allSatisfy(part -> assertThat(pages).contains(Markup.escape(part))));
  }

  private static String english(List<Declaration> declarations) {
    return new ReferencePage(declarations, Language.ENGLISH).text();
  }

  static List<Declaration> declarations() {
    return Generator.declarations();
  }

  @Test
  void goesByFamily() throws Exception {
    Element page = Markups.parse(english(Generator.declarations())).getDocumentElement();
    List<String> families = Arrays.stream(Family.values()).map(Family::title).toList();
    List<String> headings = Markups.texts(page, "h2");
    assertThat(families).containsSubsequence(headings.subList(0, headings.size() - 2));
    assertThat(headings).endsWith("Worked examples", "Errors and what to do about them");
  }

  @ParameterizedTest
  @EnumSource
  void showsEveryStepOfTheWorkedExamples(Language language) throws Exception {
    Element page =
        Markups.parse(new ReferencePage(Generator.declarations(), language).text())
            .getDocumentElement();
    for (WorkedExample example : WorkedExample.in(Sentences.in(language))) {
      assertThat(Markups.texts(page, "h3")).contains(example.title());
      for (WorkedExample.Step step : example.steps()) {
        assertThat(Markups.texts(page, "td")).contains(step.content(), step.shows(), step.why());
      }
    }
  }

  @Test
  void tellsAboutEveryKindOfError() throws Exception {
    Element page = Markups.parse(english(Generator.declarations())).getDocumentElement();
    for (ErrorKind kind : ErrorKind.values()) {
      assertThat(Markups.texts(page, "dt")).contains(String.join(", ", kind.names()));
      assertThat(Markups.texts(page, "dd"))
          .anySatisfy(
              text ->
                  assertThat(text)
                      .contains(kind.meaning(Sentences.english()), kind.fix(Sentences.english())));
    }
  }

  /** A step without its text shows and says nothing. */
  @ParameterizedTest
  @EnumSource
  void showsSomethingInEveryStepOfTheWorkedExamples(Language language) {
    for (WorkedExample example : WorkedExample.in(Sentences.in(language))) {
      assertThat(example.steps())
          .allSatisfy(step -> assertThat(step.content()).isNotBlank())
          .allSatisfy(step -> assertThat(step.shows()).isNotBlank());
    }
  }

  @Test
  void hasHeadingsInOrderAndNamedTables() throws Exception {
    Element page = Markups.parse(english(Generator.declarations())).getDocumentElement();
    assertThat(page.getAttribute("lang")).isEqualTo("en");
    assertThat(Markups.elements(page, "h1")).hasSize(1);
    assertThat(Markups.elements(page, "th"))
        .allSatisfy(head -> assertThat(head.getAttribute("scope")).isIn("row", "col"));
    assertThat(Markups.elements(page, "table"))
        .allSatisfy(table -> assertThat(Markups.texts(table, "caption")).hasSize(1));
  }

  @Test
  void isReachedAtEachFunctionByASignpost() throws Exception {
    Map<String, String> files = Generator.files(Generator.declarations());
    Element page =
        Markups.parse(files.get("extension/function-reference.html")).getDocumentElement();
    for (String section :
        new ReferencePage(Generator.declarations(), Language.ENGLISH).sections()) {
      Element sign =
          Markups.parse(files.get("extension/function-reference/" + section + ".html"))
              .getDocumentElement();
      assertThat(Markups.elements(sign, "a"))
          .extracting(link -> link.getAttribute("href"))
          .containsExactly("../function-reference.html#" + section);
      assertThat(Markups.elements(page, "section"))
          .extracting(known -> known.getAttribute("id"))
          .contains(section);
    }
  }

  @Test
  void needsNoOtherFile() throws Exception {
    Element page = Markups.parse(english(Generator.declarations())).getDocumentElement();
    assertThat(Markups.elements(page, "link")).isEmpty();
    assertThat(Markups.elements(page, "script")).isEmpty();
    assertThat(Markups.elements(page, "img")).isEmpty();
    assertThat(Markups.elements(page, "a"))
        .allSatisfy(link -> assertThat(link.getAttribute("href")).startsWith("#"));
  }

  @Test
  void escapesWhatMarkupWouldRead() throws Exception {
    Declaration awkward = Declarations.everyType(ResultKind.TABLE);
    Element section = section(english(List.of(awkward)), awkward);
    assertThat(Markups.texts(section, "p")).startsWith(awkward.description());
    assertThat(Markups.texts(section, "dd"))
        .startsWith(
            awkward.use(), "u <= |v| & <script>alert(1)</script>", "\"Tables & <figures>\"");
    assertThat(Markups.texts(section, "td")).contains("<td>", "0.1");
  }

  private static Element section(String page, Declaration declaration) throws Exception {
    return Markups.elements(Markups.parse(page).getDocumentElement(), "section").stream()
        .filter(section -> section.getAttribute("id").equals(declaration.displayName()))
        .findFirst()
        .orElseThrow();
  }
}
