package tenthmark.addin.generator;

import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;

/** The UNO interface definition (IDL) of all worksheet functions. */
final class InterfaceDefinition {

  private InterfaceDefinition() {}

  static String of(List<Declaration> declarations) {
    return """
        module tenthmark {

        interface XLab {
        %s};

        service Lab : XLab;

        };
        """
        .formatted(
            declarations.stream().map(InterfaceDefinition::method).collect(Collectors.joining()));
  }

  private static String method(Declaration declaration) {
    String parameters =
        Method.parametersOf(declaration).stream()
            .map(parameter -> "[in] " + parameter.type().idl() + " " + parameter.name())
            .collect(Collectors.joining(", "));
    return "  %s %s(%s) raises (com::sun::star::lang::IllegalArgumentException);\n"
        .formatted(UnoType.of(declaration.result()).idl(), declaration.methodName(), parameters);
  }
}
