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

  /** The function's parameters, after the document where one of them is a reference. */
  static List<Parameter> parametersOf(Declaration declaration) {
    List<Parameter> parameters = new ArrayList<>();
    if (declaration.parameters().stream()
        .anyMatch(parameter -> parameter.form() == Kind.Form.REFERENCE)) {
      parameters.add(new Parameter(UnoType.PROPERTY_SET, DOCUMENT));
    }
    declaration.parameters().stream()
        .map(parameter -> new Parameter(UnoType.of(parameter), parameter.name()))
        .forEach(parameters::add);
    return parameters;
  }
}
