package tenthmark.addin.generator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;

class ConfigurationTest {

  @ParameterizedTest
  @MethodSource("declarations")
  void hasTheTextsOfEveryFunctionAndParameter(Declaration declaration) throws Exception {
    Element function = node(functionsOf(List.of(declaration)), declaration.methodName());
    assertThat(property(function, "DisplayName")).isEqualTo(declaration.displayName());
    assertThat(property(function, "Description")).isEqualTo(declaration.description()).isNotBlank();
    assertThat(property(function, "CompatibilityName"))
        .isEqualTo("TENTHMARK.LAB." + declaration.name());
    Element parameters = node(function, "Parameters");
    assertThat(Markups.children(parameters, "node").stream().map(ConfigurationTest::name))
        .containsExactlyElementsOf(
            declaration.parameters().stream().<String>map(Parameter::name).toList());
    for (Parameter<?> parameter : declaration.parameters()) {
      Element node = node(parameters, parameter.name());
      assertThat(property(node, "DisplayName")).isEqualTo(parameter.name());
      assertThat(property(node, "Description"))
          .isEqualTo(parameter.description() + (parameter.isOptional() ? "" : " Must be given."));
      assertThat(parameter.description()).isNotBlank();
    }
  }

  static List<Declaration> declarations() {
    return Generator.declarations();
  }

  @Test
  void escapesWhatMarkupWouldRead() throws Exception {
    Declaration awkward = Declarations.everyType(ResultKind.TEXT);
    Element function = node(functionsOf(List.of(awkward)), "every");
    assertThat(property(function, "Description")).isEqualTo(awkward.description());
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

  private static String property(Element parent, String name) {
    return named(parent, "prop", name).getTextContent();
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
