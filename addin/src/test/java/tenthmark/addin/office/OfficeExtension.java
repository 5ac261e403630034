package tenthmark.addin.office;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolutionException;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands the tests one office with the extension, started once for all test classes. */
public final class OfficeExtension implements ParameterResolver {

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Office.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(Namespace.create(OfficeExtension.class))
        .getOrComputeIfAbsent(Office.class, type -> started());
  }

  private static Office started() {
    try {
      return Office.start(Profile.withExtension());
    } catch (Exception failure) {
      throw new ParameterResolutionException(failure.getMessage(), failure);
    }
  }
}
