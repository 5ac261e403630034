package tenthmark.addin.generator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;

class ReferencePageTest {

  @ParameterizedTest
  @MethodSource("declarations")
  void explainsEveryFunctionAndParameter(Declaration declaration) throws Exception {
    Element section = section(ReferencePage.of(Generator.declarations()), declaration);
    assertThat(Markups.texts(section, "h3")).containsExactly(declaration.signature());
    assertThat(Markups.texts(section, "p")).containsExactly(declaration.description());
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

  static List<Declaration> declarations() {
    return Generator.declarations();
  }

  @Test
  void goesByFamily() throws Exception {
    Element page = Markups.parse(ReferencePage.of(Generator.declarations())).getDocumentElement();
    List<String> families = Arrays.stream(Family.values()).map(Family::title).toList();
    assertThat(families).containsSubsequence(Markups.texts(page, "h2"));
  }

  @Test
  void needsNoOtherFile() throws Exception {
    Element page = Markups.parse(ReferencePage.of(Generator.declarations())).getDocumentElement();
    assertThat(Markups.elements(page, "link")).isEmpty();
    assertThat(Markups.elements(page, "script")).isEmpty();
    assertThat(Markups.elements(page, "img")).isEmpty();
    assertThat(Markups.elements(page, "a"))
        .allSatisfy(link -> assertThat(link.getAttribute("href")).startsWith("#"));
  }

  @Test
  void escapesWhatMarkupWouldRead() throws Exception {
    Declaration awkward = Declarations.everyType(ResultKind.TABLE);
    Element section = section(ReferencePage.of(List.of(awkward)), awkward);
    assertThat(Markups.texts(section, "p")).containsExactly(awkward.description());
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
