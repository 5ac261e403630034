package tenthmark.addin.menu;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.NamedValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import java.util.Locale;

/** The language of the office's menus and windows. */
final class OfficeLanguage {

  private OfficeLanguage() {}

  static Locale of(XComponentContext office) throws Exception {
    XMultiServiceFactory configuration =
        queryInterface(
            XMultiServiceFactory.class,
            office.getValueByName("/singletons/com.sun.star.configuration.theDefaultProvider"));
    Object[] node = {new NamedValue("nodepath", "/org.openoffice.Setup/L10N")};
    XNameAccess settings =
        queryInterface(
            XNameAccess.class,
            configuration.createInstanceWithArguments(
                "com.sun.star.configuration.ConfigurationAccess", node));
    return Locale.forLanguageTag((String) settings.getByName("ooLocale"));
  }
}
