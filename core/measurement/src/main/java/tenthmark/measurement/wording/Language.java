package tenthmark.measurement.wording;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import tenthmark.measurement.rounding.DecimalSign;

/** The languages in which texts are written. */
public enum Language {
  ENGLISH("en", DecimalSign.POINT),
  GERMAN("de", DecimalSign.COMMA),
  FRENCH("fr", DecimalSign.COMMA),
  SPANISH("es", DecimalSign.COMMA);

  private final String code;
  private final DecimalSign decimalSign;

  Language(String code, DecimalSign decimalSign) {
    this.code = code;
    this.decimalSign = decimalSign;
  }

  /** Two small letters (ISO 639-1). */
  public String code() {
    return code;
  }

  /** The decimal sign of most who write it; an office may be set up for another. */
  public DecimalSign decimalSign() {
    return decimalSign;
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
