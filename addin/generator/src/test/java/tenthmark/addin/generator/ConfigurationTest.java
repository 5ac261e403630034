package tenthmark.addin.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.FunctionTexts;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.wording.Language;

class ConfigurationTest {

  @ParameterizedTest
  @MethodSource("declarations")
  void hasTheTextsOfEveryFunctionAndParameter(Declaration declaration) throws Exception {
    Element function = node(functionsOf(List.of(declaration)), declaration.methodName());
    assertThat(values(function, "DisplayName"))
        .containsExactly(entry("en-US", declaration.displayName()));
    assertThat(values(function, "Description"))
        .containsExactlyEntriesOf(inEachLanguage(texts -> texts.description(declaration)))
        .containsEntry("en-US", declaration.description());
    assertThat(values(function, "CompatibilityName"))
        .containsExactly(entry("en-US", "TENTHMARK.LAB." + declaration.name()));
    Element parameters = node(function, "Parameters");
    assertThat(Markups.children(parameters, "node").stream().map(ConfigurationTest::name))
        .containsExactlyElementsOf(
            declaration.parameters().stream().<String>map(Parameter::name).toList());
    for (Parameter<?> parameter : declaration.parameters()) {
      Element node = node(parameters, parameter.name());
      assertThat(values(node, "DisplayName")).containsExactly(entry("en-US", parameter.name()));
      assertThat(values(node, "Description"))
          .containsExactlyEntriesOf(inEachLanguage(texts -> texts.inWizard(declaration, parameter)))
          .containsEntry(
              "en-US", (parameter.isOptional() ? "" : "Must be given. ") + parameter.description());
    }
  }

  static List<Declaration> declarations() {
    return Generator.declarations();
  }

  @Test
  void escapesWhatMarkupWouldRead() throws Exception {
    Declaration awkward = Declarations.everyType(ResultKind.TEXT);
    Element function = node(functionsOf(List.of(awkward)), "every");
    assertThat(values(function, "Description")).containsEntry("en-US", awkward.description());
  }

  @Test
  void listsTheWholeCatalogue() throws Exception {
    assertThat(Markups.children(functionsOf(Generator.declarations()), "node"))
        .hasSameSizeAs(Generator.declarations());
  }

  private static Element functionsOf(List<Declaration> declarations) throws Exception {
    Element root = Markups.parse(Configuration.of(declarations)).getDocumentElement();
    return node(node(node(root, "AddInInfo"), "tenthmark.Lab"), "AddInFunctions");
  }

  private static Element node(Element parent, String name) {
    return named(parent, "node", name);
  }

  /** What a property says, by the language as the office's configuration names it. */
  private static Map<String, String> values(Element parent, String name) {
    return Markups.children(named(parent, "prop", name), "value").stream()
        .collect(
            Collectors.toMap(
                value -> value.getAttribute("xml:lang"),
                Element::getTextContent,
                (one, other) -> one + other,
                LinkedHashMap::new));
  }

  private static Map<String, String> inEachLanguage(Function<FunctionTexts, String> text) {
    Map<String, String> all = new LinkedHashMap<>();
    for (Language language : Language.values()) {
      String tag = language == Language.ENGLISH ? "en-US" : language.code();
      all.put(tag, text.apply(FunctionTexts.in(language)));
    }
    return all;
  }

  private static Element named(Element parent, String kind, String name) {
    return Markups.children(parent, kind).stream()
        .filter(element -> name(element).equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + kind + " " + name));
  }

  private static String name(Element element) {
    return element.getAttribute("oor:name");
  }
}
