package tenthmark.measurement.wording;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The languages in which texts are written. */
public enum Language {
  ENGLISH("en"),
  GERMAN("de"),
  FRENCH("fr"),
  SPANISH("es");

  private final String code;

  Language(String code) {
    this.code = code;
  }

  /** Two small letters (ISO 639-1). */
  public String code() {
    return code;
  }

  /** The language with this code. */
  public static Optional<Language> ofCode(String code) {
    return Arrays.stream(values()).filter(language -> language.code.equals(code)).findFirst();
  }

  /** The language of a locale, English if it is none of these. */
  public static Language of(Locale locale) {
    return ofCode(locale.getLanguage()).orElse(ENGLISH);
  }
}
