package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.NamedValue;
import com.sun.star.configuration.theDefaultProvider;
import com.sun.star.container.NoSuchElementException;
import com.sun.star.container.XNameAccess;
import com.sun.star.i18n.XLocaleData;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import java.util.Locale;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * How the office is set up where it runs: the language of its menus, and the decimal sign of its
 * cells, which are two settings.
 */
public record OfficeLocale(Language language, DecimalSign decimalSign) {

  private static final String USER = "/org.openoffice.Setup/L10N";
  private static final String SYSTEM = "/org.openoffice.System/L10N";

  /** Asks the office, which takes changes of the language when it starts again. */
  public static OfficeLocale of(XComponentContext context) {
    XNameAccess user = settings(USER, context);
    String menus = text(user, "ooLocale");
    String cells = text(user, "ooSetupSystemLocale");
    String system = cells.isEmpty() ? text(settings(SYSTEM, context), "SystemLocale") : cells;
    return new OfficeLocale(
        Language.of(Locale.forLanguageTag(menus)),
        decimalSign(Locale.forLanguageTag(system.isEmpty() ? menus : system), context));
  }

  /** What worksheet functions write here. */
  public Sentences sentences() {
    return Sentences.in(language, decimalSign);
  }

  /** As Calc itself writes numbers, so that both are never two in one table. */
  private static DecimalSign decimalSign(Locale locale, XComponentContext context) {
    var named = new com.sun.star.lang.Locale(locale.getLanguage(), locale.getCountry(), "");
    Object data = instance("com.sun.star.i18n.LocaleData", context);
    return DecimalSign.of(
        queryInterface(XLocaleData.class, data).getLocaleItem(named).decimalSeparator);
  }

  private static XNameAccess settings(String path, XComponentContext context) {
    try {
      return queryInterface(
          XNameAccess.class,
          theDefaultProvider
              .get(context)
              .createInstanceWithArguments(
                  "com.sun.star.configuration.ConfigurationAccess",
                  new Object[] {new NamedValue("nodepath", path)}));
    } catch (Exception failure) {
      throw new IllegalStateException(failure);
    }
  }

  /** A setting, empty where nothing is set. */
  private static String text(XNameAccess settings, String name) {
    try {
      return settings.getByName(name) instanceof String text ? text : "";
    } catch (NoSuchElementException | WrappedTargetException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private static Object instance(String service, XComponentContext context) {
    try {
      return context.getServiceManager().createInstanceWithContext(service, context);
    } catch (Exception failure) {
      throw new IllegalStateException(failure);
    }
  }
}
