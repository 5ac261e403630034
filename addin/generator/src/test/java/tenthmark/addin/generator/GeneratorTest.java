package tenthmark.addin.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;

class GeneratorTest {

  @Nested
  class Output {

    @Test
    void isTheSameInAnyLocale() {
      var before = Generator.files(Generator.declarations());
      Locale own = Locale.getDefault();
      try {
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertThat(Generator.files(Generator.declarations())).isEqualTo(before);
      } finally {
        Locale.setDefault(own);
      }
    }

    @Test
    void goesBelowTheFolderInUtf8(@TempDir Path folder) throws IOException {
      Generator.main(new String[] {folder.toString()});
      for (var file : Generator.files(Generator.declarations()).entrySet()) {
        assertThat(Files.readString(folder.resolve(file.getKey()), StandardCharsets.UTF_8))
            .isEqualTo(file.getValue())
            .doesNotContain("\r");
      }
    }
  }

  @Nested
  class Interface {

    @Test
    void givesEachKindOfParameterItsType() {
      List<Declaration> every = List.of(Declarations.everyType(ResultKind.NUMBER));
      assertThat(InterfaceDefinition.of(every))
          .contains(
              "double every([in] com::sun::star::beans::XPropertySet theDocument, [in]"
                  + " com::sun::star::table::XCellRange formula, [in] any value, [in] sequence<any>"
                  + " more) raises (com::sun::star::lang::IllegalArgumentException);");
      assertThat(UnoInterface.of(every))
          .contains(
              "double every(com.sun.star.beans.XPropertySet theDocument,"
                  + " com.sun.star.table.XCellRange formula, Object value, Object[] more) throws"
                  + " IllegalArgumentException;")
          .contains("new MethodTypeInfo(\"every\", 0, 0)")
          .contains("new ParameterTypeInfo(\"value\", \"every\", 2, TypeInfo.ANY)")
          .contains("new ParameterTypeInfo(\"more\", \"every\", 3, TypeInfo.ANY)");
      assertThat(Implementation.of(every))
          .contains("OfficeCells theCells = cells(theDocument);")
          .contains(
              "return number(\"LAB_EVERY\", flat(new Object[] {theCells.block(formula), value,"
                  + " more}));");
    }

    @ParameterizedTest
    @EnumSource
    void givesEachKindOfResultItsType(ResultKind result) {
      String type =
          switch (result) {
            case NUMBER -> "double";
            case TEXT -> "string";
            case EITHER -> "any";
            case TABLE -> "sequence< sequence<any> >";
          };
      assertThat(InterfaceDefinition.of(List.of(Declarations.with("RESULT", result))))
          .contains("  " + type + " result() raises");
    }
  }

  @Nested
  class Refuses {

    @ParameterizedTest
    @ValueSource(strings = {"sequence", "class", "out", "double"})
    void reservedWords(String word) {
      Declaration declaration =
          Declarations.with(
              "ANY", ResultKind.TEXT, Parameter.required(word, "A number.", Kinds.number()));
      Declaration named = Declarations.with(word.toUpperCase(Locale.ROOT), ResultKind.TEXT);
      for (Declaration refused : List.of(declaration, named)) {
        assertThatThrownBy(() -> Generator.files(List.of(refused)))
            .hasMessageContaining("is a reserved word");
      }
    }

    /** Calc 7.4 shows Err:504 where such an argument is left out. */
    @Test
    void aReferenceThatMayBeLeftOut() {
      Declaration declaration =
          Declarations.with(
              "FOLLOW",
              ResultKind.NUMBER,
              Parameter.optional("cell", "A cell.", Kinds.reference()));
      assertThatThrownBy(() -> Generator.files(List.of(declaration)))
          .hasMessage("LAB_FOLLOW: cell takes a reference, so it must be required");
    }
  }
}
