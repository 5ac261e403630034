package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.FunctionArgument;
import com.sun.star.uno.UnoRuntime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

  private final Map<String, Map<String, Object>> known = new TreeMap<>();

  @BeforeAll
  void ask(Office office) throws Exception {
    XIndexAccess descriptions =
        UnoRuntime.queryInterface(
            XIndexAccess.class, office.service("com.sun.star.sheet.FunctionDescriptions"));
    for (int i = 0; i < descriptions.getCount(); i++) {
      Map<String, Object> properties =
          Arrays.stream((PropertyValue[]) descriptions.getByIndex(i))
              .collect(Collectors.toMap(property -> property.Name, property -> property.Value));
      known.put((String) properties.get("Name"), properties);
    }
  }

  static Stream<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration);
  }

  @Test
  void listsExactlyTheCatalogue() {
    assertThat(known.keySet().stream().filter(name -> name.startsWith("LAB_")))
        .containsExactlyInAnyOrderElementsOf(declarations().map(Declaration::displayName).toList());
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void explainsTheFunctionAndItsParameters(Declaration declaration) {
    Map<String, Object> function = known.get(declaration.displayName());
    assertThat(function).containsEntry("Description", declaration.description());
    List<FunctionArgument> arguments = List.of((FunctionArgument[]) function.get("Arguments"));
    assertThat(arguments)
        .extracting(argument -> argument.Name)
        .containsExactlyElementsOf(
            declaration.parameters().stream().<String>map(Parameter::name).toList());
    for (int i = 0; i < arguments.size(); i++) {
      Parameter<?> parameter = declaration.parameters().get(i);
      assertThat(arguments.get(i).Description)
          .startsWith(parameter.description())
          .endsWith(parameter.isOptional() ? parameter.description() : "Must be given.");
    }
  }
}
