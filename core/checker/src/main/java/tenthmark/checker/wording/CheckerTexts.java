package tenthmark.checker.wording;

import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/** All that the checker says about workbooks. */
public final class CheckerTexts {

  private CheckerTexts() {}

  /** What it says where no language is chosen. */
  public static Sentences english() {
    return in(Language.ENGLISH);
  }

  /** What it says in a language, whose decimal sign the numbers have. */
  public static Sentences in(Language language) {
    return Sentences.of(CheckerTexts.class, "texts", language, language.decimalSign())
        .and(Sentences.in(language));
  }
}
