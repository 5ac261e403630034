package tenthmark.addin.wording;

import tenthmark.addin.OfficeLocale;
import tenthmark.measurement.wording.Sentences;

/** All that the menu and its windows say. */
public final class DialogTexts {

  private DialogTexts() {}

  /** The texts as the office is set up. */
  public static Sentences in(OfficeLocale locale) {
    return Sentences.of(DialogTexts.class, "dialogs", locale.language(), locale.decimalSign())
        .and(locale.sentences());
  }
}
