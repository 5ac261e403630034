package tenthmark.addin.office;

import java.util.Set;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.Store;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolutionException;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands the tests one office with the extension, started once for all test classes, and each test
 * that asks for one an empty spreadsheet, which is closed after it.
 */
public final class OfficeExtension implements ParameterResolver {

  private static final Namespace OURS = Namespace.create(OfficeExtension.class);

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return Set.of(Office.class, Workbook.class).contains(parameter.getParameter().getType());
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    try {
      return parameter.getParameter().getType() == Office.class
          ? office(context)
          : workbook(context);
    } catch (Exception failure) {
      throw new ParameterResolutionException(failure.getMessage(), failure);
    }
  }

  private static Office office(ExtensionContext context) throws Exception {
    Store store = context.getRoot().getStore(OURS);
    Office office = store.get(Office.class, Office.class);
    if (office == null) {
      office = Office.start(Profile.withExtension());
      store.put(Office.class, office);
    }
    return office;
  }

  private static Workbook workbook(ExtensionContext context) throws Exception {
    Store store = context.getStore(OURS);
    Workbook workbook = store.get(Workbook.class, Workbook.class);
    if (workbook == null) {
      workbook = office(context).create();
      store.put(Workbook.class, workbook);
    }
    return workbook;
  }
}
