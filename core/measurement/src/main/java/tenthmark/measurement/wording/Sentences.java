package tenthmark.measurement.wording;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import tenthmark.measurement.rounding.DecimalSign;

/**
 * The texts of a module in one language, and the decimal sign of the numbers in them. A language is
 * one file beside the English one, which fills in for a key that a language has not.
 */
public final class Sentences {

  private static final ResourceBundle.Control THIS_LANGUAGE_OR_ENGLISH =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final List<ResourceBundle> bundles;
  private final Language language;
  private final DecimalSign decimalSign;

  private Sentences(List<ResourceBundle> bundles, Language language, DecimalSign decimalSign) {
    this.bundles = bundles;
    this.language = language;
    this.decimalSign = decimalSign;
  }

  /** What worksheet functions write, in English with a decimal point. */
  public static Sentences english() {
    return in(Language.ENGLISH);
  }

  /** What worksheet functions write, with the language's own decimal sign. */
  public static Sentences in(Language language) {
    return in(language, language.decimalSign());
  }

  /** What worksheet functions write. */
  public static Sentences in(Language language, DecimalSign decimalSign) {
    return of(Sentences.class, "sentences", language, decimalSign);
  }

  /**
   * The texts of any module.
   *
   * @param owner a class of the module, in the package of the files
   * @param name of the files: {@code name.properties}, {@code name_de.properties} and so on
   */
  public static Sentences of(
      Class<?> owner, String name, Language language, DecimalSign decimalSign) {
    ResourceBundle bundle =
        ResourceBundle.getBundle(
            owner.getPackageName() + "." + name,
            language == Language.ENGLISH ? Locale.ROOT : Locale.forLanguageTag(language.code()),
            owner.getClassLoader(),
            THIS_LANGUAGE_OR_ENGLISH);
    return new Sentences(List.of(bundle), language, decimalSign);
  }

  /** These texts, and for keys that are not among them those of another module. */
  public Sentences and(Sentences others) {
    return new Sentences(
        Stream.of(bundles, others.bundles).flatMap(List::stream).toList(), language, decimalSign);
  }

  /** A text in every language, as a worksheet function may have written it in any office. */
  public static List<String> inEveryLanguage(String key) {
    return Arrays.stream(Language.values())
        .map(language -> in(language, DecimalSign.POINT).say(key))
        .toList();
  }

  /** Whether there is a sentence with this key. */
  public boolean knows(String key) {
    return bundles.stream().anyMatch(bundle -> bundle.containsKey(key));
  }

  /** The sentence with this key, its numbered gaps filled in. */
  public String say(String key, String... gaps) {
    return new MessageFormat(text(key), Locale.ROOT).format(gaps);
  }

  private String text(String key) {
    return bundles.stream()
        .filter(bundle -> bundle.containsKey(key))
        .findFirst()
        .orElse(bundles.get(0))
        .getString(key);
  }

  /** A sentence with all that is in its gaps. */
  public String say(Message message) {
    return say(message.key(), message.gaps().stream().map(this::written).toArray(String[]::new));
  }

  private String written(Object gap) {
    if (gap instanceof Message part) {
      return say(part);
    }
    return gap instanceof Message.Figure figure
        ? decimalSign.write(figure.digits())
        : gap.toString();
  }

  /** The language that they are in. */
  public Language language() {
    return language;
  }

  /** The decimal sign of the numbers in the sentences. */
  public DecimalSign decimalSign() {
    return decimalSign;
  }
}
