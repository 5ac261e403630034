package tenthmark.addin.generator;

import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;

/**
 * The class that implements the UNO interface. Each method only names its function and hands its
 * arguments to the hand-written {@code tenthmark.addin.LabComponent}.
 */
final class Implementation {

  private static final String CELLS =
      "    OfficeCells theCells = cells(%s);\n".formatted(Method.DOCUMENT);

  private static final String CONVENTION = "convention(%s), ".formatted(Method.DOCUMENT);

  private Implementation() {}

  static String of(List<Declaration> declarations) {
    return """
    package tenthmark.addin;

    import com.sun.star.lang.IllegalArgumentException;
    import com.sun.star.uno.XComponentContext;
    import tenthmark.XLab;

    /** The worksheet functions as Calc calls them. */
    public final class Lab extends LabComponent implements XLab {

      public Lab(XComponentContext context) {
        super(context);
      }

    %s}
    """
        .formatted(declarations.stream().map(Implementation::method).collect(Collectors.joining()));
  }

  private static String method(Declaration declaration) {
    return """
      @Override
      public %s {
    %s    return %s("%s", %s%s);
      }

    """
        .formatted(
            UnoInterface.signature(declaration),
            Method.takesCells(declaration) ? CELLS : "",
            caller(declaration.result()),
            declaration.displayName(),
            declaration.usesConvention() ? CONVENTION : "",
            arguments(declaration.parameters()));
  }

  private static String caller(ResultKind result) {
    return switch (result) {
      case NUMBER -> "number";
      case TEXT -> "text";
      case EITHER -> "either";
      case TABLE -> "table";
    };
  }

  private static String arguments(List<Parameter<?>> parameters) {
    String all =
        parameters.stream()
            .map(Implementation::argument)
            .collect(Collectors.joining(", ", "new Object[] {", "}"));
    boolean open = !parameters.isEmpty() && parameters.get(parameters.size() - 1).isRepeated();
    return open ? "flat(%s)".formatted(all) : all;
  }

  private static String argument(Parameter<?> parameter) {
    return UnoType.of(parameter) == UnoType.CELL_RANGE
        ? "theCells.block(%s)".formatted(parameter.name())
        : parameter.name();
  }
}
