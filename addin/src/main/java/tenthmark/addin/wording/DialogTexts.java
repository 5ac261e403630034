package tenthmark.addin.wording;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/** The texts of the menu and its windows, in the language of the office's own windows. */
public final class DialogTexts {

  private final ResourceBundle bundle;
  private final Locale locale;

  private DialogTexts(ResourceBundle bundle, Locale locale) {
    this.bundle = bundle;
    this.locale = locale;
  }

  /** The texts in a language, in English where there are none. */
  public static DialogTexts in(Locale locale) {
    return new DialogTexts(
        ResourceBundle.getBundle(
            DialogTexts.class.getPackageName() + ".dialogs",
            locale,
            DialogTexts.class.getClassLoader(),
            Control.getNoFallbackControl(Control.FORMAT_PROPERTIES)),
        locale);
  }

  /** The text with this key, its numbered gaps filled in. */
  public String say(String key, Object... gaps) {
    return new MessageFormat(bundle.getString(key), locale).format(gaps);
  }

  /** The title of a command. */
  public String title(String command) {
    return bundle.getString("menu." + command);
  }

  /** The language asked for, whether or not there are texts in it. */
  public Locale locale() {
    return locale;
  }
}
