package tenthmark.addin.generator;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;

/**
 * The Java side of the interface definition, with the type information that the office's Java
 * bridge reads from a UNO interface.
 */
final class UnoInterface {

  private UnoInterface() {}

  static String of(List<Declaration> declarations) {
    return """
        package tenthmark;

        import com.sun.star.lang.IllegalArgumentException;
        import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
        import com.sun.star.lib.uno.typeinfo.ParameterTypeInfo;
        import com.sun.star.lib.uno.typeinfo.TypeInfo;
        import com.sun.star.uno.XInterface;

        /** All worksheet functions. */
        public interface XLab extends XInterface {

          TypeInfo[] UNOTYPEINFO = {
        %s
          };

        %s}
        """
        .formatted(typeInformation(declarations), methods(declarations));
  }

  private static String methods(List<Declaration> declarations) {
    return declarations.stream()
        .map(declaration -> "  " + signature(declaration) + ";\n\n")
        .collect(Collectors.joining());
  }

  /** The method of a function as an interface declares it and a class implements it. */
  static String signature(Declaration declaration) {
    String parameters =
        Method.parametersOf(declaration).stream()
            .map(parameter -> parameter.type().java() + " " + parameter.name())
            .collect(Collectors.joining(", "));
    return "%s %s(%s) throws IllegalArgumentException"
        .formatted(UnoType.of(declaration.result()).java(), declaration.methodName(), parameters);
  }

  private static String typeInformation(List<Declaration> declarations) {
    List<String> lines = new ArrayList<>();
    for (int method = 0; method < declarations.size(); method++) {
      Declaration declaration = declarations.get(method);
      lines.add(
          "    new MethodTypeInfo(\"%s\", %d, %s)"
              .formatted(declaration.methodName(), method, flag(UnoType.of(declaration.result()))));
      List<Method.Parameter> parameters = Method.parametersOf(declaration);
      for (int index = 0; index < parameters.size(); index++) {
        UnoType type = parameters.get(index).type();
        if (type.isAny()) {
          lines.add(
              "    new ParameterTypeInfo(\"%s\", \"%s\", %d, %s)"
                  .formatted(
                      parameters.get(index).name(), declaration.methodName(), index, flag(type)));
        }
      }
    }
    return String.join(",\n", lines);
  }

  private static String flag(UnoType type) {
    return type.isAny() ? "TypeInfo.ANY" : "0";
  }
}
