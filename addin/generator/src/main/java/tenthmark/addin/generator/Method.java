package tenthmark.addin.generator;

import java.util.ArrayList;
import java.util.List;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Kind;

/** The UNO method of a worksheet function. */
final class Method {

  /** The parameter by which Calc hands over the calling document; users do not see it. */
  static final String DOCUMENT = "theDocument";

  /** One parameter of the method. */
  record Parameter(UnoType type, String name) {}

  private Method() {}

  /**
   * Refuses what Calc cannot do: it shows an error where an argument that is a reference is left
   * out.
   */
  static void check(Declaration declaration) {
    declaration.parameters().stream()
        .filter(parameter -> parameter.form() == Kind.Form.REFERENCE)
        .filter(parameter -> parameter.isOptional() || parameter.isRepeated())
        .findFirst()
        .ifPresent(
            parameter -> {
              throw new IllegalArgumentException(
                  declaration.displayName()
                      + ": "
                      + parameter.name()
                      + " takes a reference, so it must be required");
            });
  }

  /** The function's parameters, after the document where it needs more than their values. */
  static List<Parameter> parametersOf(Declaration declaration) {
    List<Parameter> parameters = new ArrayList<>();
    if (takesCells(declaration) || declaration.usesConvention()) {
      parameters.add(new Parameter(UnoType.PROPERTY_SET, DOCUMENT));
    }
    declaration.parameters().stream()
        .map(parameter -> new Parameter(UnoType.of(parameter), parameter.name()))
        .forEach(parameters::add);
    return parameters;
  }

  static boolean takesCells(Declaration declaration) {
    return declaration.parameters().stream()
        .anyMatch(parameter -> parameter.form() == Kind.Form.REFERENCE);
  }
}
