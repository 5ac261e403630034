package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.FunctionArgument;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.WorksheetFunction;

/** What Calc's function wizard knows about each function. */
@ExtendWith(OfficeExtension.class)
@TestInstance(Lifecycle.PER_CLASS)
class FunctionWizardIT {

  private KnownFunctions known;

  @BeforeAll
  void ask(Office office) throws Exception {
    known = KnownFunctions.of(office);
  }

  static Stream<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration);
  }

  @Test
  void listsExactlyTheCatalogue() {
    assertThat(known.names().stream().filter(name -> name.startsWith("LAB_")))
        .containsExactlyInAnyOrderElementsOf(declarations().map(Declaration::displayName).toList());
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void explainsTheFunctionAndItsParameters(Declaration declaration) {
    assertThat(known.description(declaration.displayName())).isEqualTo(declaration.description());
    List<FunctionArgument> arguments = known.arguments(declaration.displayName());
    assertThat(arguments)
        .extracting(argument -> argument.Name)
        .containsExactlyElementsOf(
            declaration.parameters().stream().<String>map(Parameter::name).toList());
    for (int i = 0; i < arguments.size(); i++) {
      Parameter<?> parameter = declaration.parameters().get(i);
      assertThat(arguments.get(i).Description)
          .isEqualTo((parameter.isOptional() ? "" : "Must be given. ") + parameter.description());
    }
  }
}
