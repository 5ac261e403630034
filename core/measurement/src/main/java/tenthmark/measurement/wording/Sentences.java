package tenthmark.measurement.wording;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences that worksheet functions write, in one language. A language is one file beside
 * {@code sentences.properties}.
 */
public final class Sentences {

  private final ResourceBundle bundle;

  private Sentences(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** The sentences in English. */
  public static Sentences english() {
    return new Sentences(
        ResourceBundle.getBundle(
            Sentences.class.getPackageName() + ".sentences",
            Locale.ROOT,
            Sentences.class.getClassLoader()));
  }

  /** The sentence with this key, its numbered gaps filled in. */
  public String say(String key, String... gaps) {
    return new MessageFormat(bundle.getString(key), Locale.ROOT).format(gaps);
  }
}
