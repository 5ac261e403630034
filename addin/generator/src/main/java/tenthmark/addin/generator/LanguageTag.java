package tenthmark.addin.generator;

import tenthmark.measurement.wording.Language;

/** What the office's configuration calls a language. */
final class LanguageTag {

  /** The office falls back to this one, so everything needs it. */
  static final String ENGLISH = "en-US";

  private LanguageTag() {}

  static String of(Language language) {
    return language == Language.ENGLISH ? ENGLISH : language.code();
  }
}
