package tenthmark.measurement.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ErrorNameTest {

  /** As LibreOffice 7.4 showed them in each language. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#DIV/0! | #DIV/0!    | #DIV/0\u00a0! | #¡DIV/0!",
        "#NUM!   | #ZAHL!     | #NUM\u00a0!   | #¡NUM!",
        "#VALUE! | #WERT!     | #VALEUR\u00a0! | #¡VALOR!",
        "#REF!   | #BEZUG!    | #RÉF\u00a0!   | #¡REF!",
        "#NAME?  | #NAME?     | #NOM\u00a0?   | #¿NOMBRE?",
        "#N/A    | #NV        | #N/D          | #N/D",
        "Err:504 | Fehler:504 | Err\u00a0:504 | Err:504",
      })
  void isThatOfTheOffice(String english, String german, String french, String spanish) {
    Message shown = new ErrorName(english).shown();
    assertThat(shown).hasToString(english);
    assertThat(Sentences.in(Language.GERMAN).say(shown)).isEqualTo(german);
    assertThat(Sentences.in(Language.FRENCH).say(shown)).isEqualTo(french);
    assertThat(Sentences.in(Language.SPANISH).say(shown)).isEqualTo(spanish);
  }

  @ParameterizedTest
  @ValueSource(strings = {"###", "#GETTING_DATA", "it''s {0}", "Err:"})
  void staysIfItIsNotKnown(String name) {
    assertThat(Sentences.in(Language.GERMAN).say(new ErrorName(name).shown())).isEqualTo(name);
  }
}
