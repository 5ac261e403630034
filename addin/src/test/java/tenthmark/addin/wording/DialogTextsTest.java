package tenthmark.addin.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.addin.OfficeLocale;
import tenthmark.addin.menu.Commands;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.SentenceFiles;
import tenthmark.measurement.wording.SourceLiterals;
import tenthmark.measurement.wording.TextsInEveryLanguage;

class DialogTextsTest extends TextsInEveryLanguage {

  private static final SourceLiterals CODE = SourceLiterals.ofThisModule();

  @Override
  protected Map<String, String> texts(Language language) {
    return SentenceFiles.texts(DialogTexts.class, "dialogs", language);
  }

  @Override
  protected Set<String> likeEnglish(Language language) {
    return switch (language) {
      case GERMAN -> Set.of("finding.line", "reading.line");
      case FRENCH -> Set.of("reading.line", "table.instrument");
      case SPANISH -> Set.of("finding.error", "finding.line", "reading.line");
      case ENGLISH -> Set.of();
    };
  }

  @Override
  protected boolean isUsed(String key) {
    return CODE.mayName(key);
  }

  @Test
  void nameEveryCommand() {
    assertThat(texts(Language.ENGLISH).keySet())
        .containsAll(
            Commands.load().all().stream().map(command -> "menu." + command.name()).toList());
  }

  /** The build copies them into the configuration as they stand. */
  @ParameterizedTest
  @EnumSource
  void leaveTitlesOfTheMenuWithoutApostrophe(Language language) {
    texts(language)
        .forEach(
            (key, text) -> {
              if (key.startsWith("menu.")) {
                assertThat(text).doesNotContain("'");
              }
            });
  }

  /** One that the functions had as well would be said in the place of theirs. */
  @Test
  void haveKeysOfTheirOwn() {
    Set<String> both = new TreeSet<>(SentenceFiles.texts(Language.ENGLISH).keySet());
    both.retainAll(texts(Language.ENGLISH).keySet());
    assertThat(both).isEmpty();
  }

  @Test
  void areInTheLanguageOfTheOffice() {
    OfficeLocale german = new OfficeLocale(Language.GERMAN, DecimalSign.COMMA);
    assertThat(DialogTexts.in(german).say("menu.reference")).isEqualTo("Funktionsverzeichnis");
  }
}
